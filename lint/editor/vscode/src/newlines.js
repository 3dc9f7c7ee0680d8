// What a new line begins with: told from the line above it. Nothing here knows the editor.

/** Keys under which a list stands, item by item. */
export function listKeys(schemas) {
  const keys = new Set();
  const look = (node) => {
    if (Array.isArray(node)) node.forEach(look);
    if (!node || typeof node !== "object" || Array.isArray(node)) return;
    for (const [key, value] of Object.entries(node.properties ?? {})) {
      const target = value.$ref ? followed(schemas, value.$ref) : value;
      if (target?.type === "array") keys.add(key);
    }
    Object.values(node).forEach(look);
  };
  schemas.forEach(look);
  return [...keys].sort();
}

function followed(schemas, reference) {
  const [, name] = /^#\/\$defs\/(\w+)$/.exec(reference) ?? [];
  return schemas.map(({ $defs }) => $defs?.[name]).find(Boolean);
}

/**
 * Rules `{before, after, begin}`, the first that fits counts: where the line up to the caret matches `before` and the
 * rest matches `after`, the new line begins with the blanks of this one and then with `begin`.
 */
export function newLineRules(keys) {
  const key = String.raw`(?:[^\s#'"{}\[\]&*!|>%@,-][^#:]*|-[^\s#:][^#:]*|"[^"]*"|'[^']*')`;
  const anchor = String.raw`(?:\s+&\S+)?`;
  const end = String.raw`\s*(?:\s#.*)?$`;
  const dash = String.raw`^\s*- (?:&\S+ )?`;
  const list = `(?:${keys.join("|")})`;
  const rules = [
    [String.raw`${dash}${list}:${anchor}${end}`, "    - "],
    [String.raw`^\s*${list}:${anchor}${end}`, "  - "],
    [String.raw`${dash}${key}:${anchor}(?:\s+[|>][-+]?)?${end}`, "    "],
    [String.raw`^\s*${key}:${anchor}(?:\s+[|>][-+]?)?${end}`, "  "],
    [String.raw`${dash}(?:\{.*\}|\[.*\]|\*\S+)${end}`, "- "],
    [String.raw`${dash}${key}:\s.*$`, "  "],
    [String.raw`${dash}[^\s{\[#].*$`, "- "],
  ];
  return rules.map(([before, begin]) => ({ before: new RegExp(before), after: /^\s*(?:#.*)?$/, begin }));
}

/** Whether a line is an item of a list with nothing in it. */
export function isEmptyItem(line) {
  return /^\s*-\s*$/.test(line);
}

/** What an empty item becomes as its list is left: an item of the list around it, else nothing. */
export function leftList(lines, row) {
  let level = lines[row].indexOf("-");
  for (const line of lines.slice(0, row).reverse()) {
    const [, blanks] = /^(\s*)- /.exec(line) ?? [];
    if (blanks !== undefined && blanks.length < level) return `${blanks}- `;
    const indent = line.search(/\S/);
    if (indent === 0 && !line.startsWith("#")) return "";
    if (blanks !== undefined) level = Math.min(level, blanks.length);
  }
  return "";
}
