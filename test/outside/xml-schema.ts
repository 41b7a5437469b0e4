import { readFile } from 'node:fs/promises';
import { validateXML } from 'xmllint-wasm';

/** What libxml2 finds wrong with a document by a W3C XML Schema or a RELAX NG schema (its XML syntax). */
export async function schemaErrors(
  xml: string,
  schemaFile: string,
  extension: 'schema' | 'relaxng',
): Promise<string[]> {
  const result = await validateXML({
    xml: { fileName: 'document.xml', contents: xml },
    schema: await readFile(schemaFile, 'utf8'),
    extension,
  });
  return result.errors.map(({ message }) => message);
}
