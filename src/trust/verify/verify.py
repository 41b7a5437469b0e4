#!/usr/bin/env python3
"""Checks a downloaded ledger with nothing but Python: verify.py [folder [an older marks.txt that you kept]]

The folder holds rows.jsonl, marks.txt and proofs.json; the hash tree is that of RFC 9162, section 2.1. "ok" says that no row
changed since the marks: tamper-evident. It does not say that a row is true, and it does not look at signatures.
"""
import base64, hashlib, json, pathlib, re, sys
MARK = re.compile(r"([!-*,-~]+)\n([1-9][0-9]{0,15})\n(\S{44})\ndate ([0-9]{4}-[0-9]{2}-[0-9]{2})(\n[^\n]+)*")

def need(fact, message):
    if not fact: raise ValueError(message)
def leaf_hash(row): return hashlib.sha256(b"\x00" + row).digest()
def node_hash(left, right): return hashlib.sha256(b"\x01" + left + right).digest()
def split(n): return 1 << ((n - 1).bit_length() - 1)  # the largest power of two below n

def read_hash(text):
    data = base64.b64decode(text, validate=True)
    need(len(data) == 32 and base64.b64encode(data).decode() == text, f"{text} is no hash")
    return data

def read_marks(text):  # paragraphs one blank line apart: a mark, or the signatures of the mark before
    need(text.endswith("\n"), "marks.txt is cut off")
    marks = []
    for part in text[:-1].split("\n\n"):
        if marks and part.startswith("— "): continue
        mark = MARK.fullmatch(part)
        need(mark, "marks.txt has a paragraph that is neither a mark nor signatures")
        marks.append((mark[1], int(mark[2]), read_hash(mark[3]), mark[4]))
    for old, new in zip(marks, marks[1:]):
        need(old[0] == new[0] and old[1] < new[1], f"the mark of {new[3]} does not follow that of {old[3]}")
    return marks

def roots(leaves):  # the root over the first leaf, over the first two, …
    full = []  # the roots of full subtrees, widest first
    for count, leaf in enumerate(leaves, 1):
        full.append(leaf)
        for _ in range((count & -count).bit_length() - 1): full[-2:] = [node_hash(*full[-2:])]
        root = full[-1]
        for left in full[-2::-1]: root = node_hash(left, root)
        yield root

def included(m, n, leaf, path):  # section 2.1.3.1, from the proof to the root
    need(bool(path) == (n > 1), "the proof has another length")
    if n == 1: return leaf
    k, rest, last = split(n), path[:-1], path[-1]
    return node_hash(included(m, k, leaf, rest), last) if m < k else node_hash(last, included(m - k, n - k, leaf, rest))

def extended(m, n, root, path, whole=True):  # section 2.1.4.1, from the proof to both roots
    if m == n:
        [end] = [root] * whole + path  # fails when the proof has another length
        return end, end
    need(path, "the proof has another length")
    k, rest, last = split(n), path[:-1], path[-1]
    old, new = extended(m, k, root, rest, whole) if m <= k else extended(m - k, n - k, root, rest, False)
    return (old, node_hash(new, last)) if m <= k else (node_hash(last, old), node_hash(last, new))

def proven(expected, check, *claim, proof):
    try: return check(*claim, [read_hash(text) for text in proof]) == expected
    except (ValueError, TypeError): return False

def verify(rows, marks, proofs, kept=b""):
    need(marks.startswith(kept), "marks.txt is not the one you kept with more added to it")
    *rows, end = rows.split(b"\n")
    marks, proofs, failures, others = read_marks(marks.decode("utf-8")), json.loads(proofs), [], []
    size, newest = marks[-1][1:3]
    need(end == b"" and len(rows) == size, f"rows.jsonl does not have the {size} rows of the newest mark")
    leaves = [leaf_hash(row) for row in rows]
    found = dict(enumerate(roots(leaves), 1))
    for _, count, root, date in marks:
        print(f"{date} {count} rows: {'ok' if found[count] == root else 'other rows'}")
        if found[count] != root: others.append(f"the rows are not those of the mark of {date}")
    steps, inclusion, consistency = list(zip(marks, marks[1:])), proofs["inclusion"], proofs["consistency"]
    need(len(inclusion) == size and len(consistency) == len(steps), "proofs.json does not fit marks.txt")
    for index, proof in enumerate(inclusion):
        if not proven(newest, included, index, size, leaves[index], proof=proof):
            failures.append(f"line {index + 1} of rows.jsonl is not proven")
    for (old, new), proof in zip(steps, consistency):
        if not proven((old[2], new[2]), extended, old[1], new[1], old[2], proof=proof):
            failures.append(f"the mark of {new[3]} is not proven to extend that of {old[3]}")
    failures += others
    need(not failures, f"{len(failures)} failed: {'; '.join(failures[:5])}")
    print(f"ok: {size} rows, {len(marks)} marks")

if __name__ == "__main__":
    names = [f"{(sys.argv + ['.'])[1]}/{name}" for name in ("rows.jsonl", "marks.txt", "proofs.json")] + sys.argv[2:3]
    try:
        verify(*[pathlib.Path(name).read_bytes() for name in names])
    except (ValueError, OSError, KeyError, TypeError, RecursionError) as error:
        print(f"not ok: {error}")
        sys.exit(1)
