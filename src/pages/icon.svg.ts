// A scribed line across the joint of two parts: the mark that gives the project its name.
const ICON = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><rect width="32" height="32" fill="#16335b"/><path d="M0 17h14v-3h18" fill="none" stroke="#8fb4e8" stroke-width="2"/><path d="M10 27 22 5" stroke="#fff" stroke-width="3"/></svg>`;

export function GET(): Response {
  return new Response(ICON, { headers: { 'Content-Type': 'image/svg+xml; charset=utf-8' } });
}
