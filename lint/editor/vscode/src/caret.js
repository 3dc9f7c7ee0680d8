// Where a caret stands in YAML that may be half typed: told from indentation, dashes and the line's own brackets.

/**
 * `{path, siblings, takesKey, takesValue, start}`, or null in a comment or a quoted text. `path` holds the keys
 * from the top, null for a point of a list; `siblings` are the keys beside; `start` is where the word begins.
 */
export function caret(lines, row, column) {
  const before = lines[row].slice(0, column);
  const here = opened(before);
  const words = inBrackets(before.slice(here.content));
  if (!words) return null;

  const up = above(lines, row, here);
  const last = words.frames.at(-1);
  const path = [...up.path, ...words.frames.flatMap(({ isList, key }) => (isList ? [null] : key ? [key] : []))];

  const isBlock = words.frames.length === 1;
  const after = isBlock ? below(lines, row, here.content) : keysAfter(lines[row].slice(column));
  const siblings = new Set([...(isBlock ? up.siblings : []), ...last.keys, ...after]);
  const takesKey = last.key === undefined;
  return {
    path,
    siblings: takesKey ? siblings : new Set(),
    takesKey,
    takesValue: !takesKey || last.isList || (isBlock && here.dashes.length > 0),
    start: here.content + words.start,
  };
}

/** A line's leading dashes, by column, and the column at which its words begin. */
function opened(line) {
  const dashes = [];
  let content = line.length - line.trimStart().length;
  while (/^-(?:\s|$)/.test(line.slice(content))) {
    dashes.push(content);
    content += 1;
    content += line.slice(content).length - line.slice(content).trimStart().length;
  }
  return { dashes, content };
}

/** The key with which a line's words begin, or undefined. */
function keyOf(words) {
  return /^(?:"([^"]*)"|'([^']*)'|([^\s#{["'][^#]*?))\s*:(?:\s|$)/.exec(words)?.slice(1).find(Boolean);
}

/** The keys above a line that it stands under, and those written before it at its own level. */
function above(lines, row, { dashes, content }) {
  const path = [];
  const siblings = new Set();
  let level = content;
  let underDash = false;
  const climb = (columns) => {
    for (const column of [...columns].reverse()) {
      if (column >= level) continue;
      path.unshift(null);
      level = column;
      underDash = true;
    }
  };
  climb(dashes);
  for (const line of lines.slice(0, row).reverse()) {
    if (/^\s*(?:#|$)/.test(line)) continue;
    const one = opened(line);
    const key = keyOf(line.slice(one.content));
    if (key !== undefined && (one.content < level || (underDash && one.content === level && !one.dashes.length))) {
      path.unshift(key);
      level = one.content;
      underDash = false;
    } else if (key !== undefined && path.length === 0 && one.content === level) {
      siblings.add(key);
    }
    climb(one.dashes);
  }
  return { path, siblings };
}

/** The keys written after a line at its own level. */
function below(lines, row, level) {
  const keys = [];
  for (const line of lines.slice(row + 1)) {
    if (/^\s*(?:#|$)/.test(line)) continue;
    const one = opened(line);
    if (one.content < level || one.dashes.some((dash) => dash < level)) break;
    if (one.content === level) keys.push(keyOf(line.slice(level)));
  }
  return keys.filter(Boolean);
}

/** The keys that follow in the same brackets, up to where these close. */
function keysAfter(words) {
  const [rest] = words.split(/[\]}]/, 1);
  return [...rest.matchAll(/,\s*([^,:{["']+?)\s*:/g)].map((found) => found[1]);
}

/**
 * A line's words as the brackets that stand open at their end, outermost first, each with the key that is being
 * given a value and the keys before; the first frame is the line itself. Null in a comment or a quoted text.
 */
function inBrackets(words) {
  const frame = (isList) => ({ isList, key: undefined, keys: [] });
  const frames = [frame(false)];
  let start = 0;
  for (let at = 0; at < words.length; at += 1) {
    const sign = words[at];
    const last = frames.at(-1);
    const isFirst = words.slice(start, at).trim() === "";
    if (isFirst && (sign === '"' || sign === "'")) {
      at = words.indexOf(sign, at + 1);
      if (at < 0) return null;
    } else if (sign === "#" && (at === 0 || /\s/.test(words[at - 1]))) {
      return null;
    } else if (isFirst && (sign === "{" || sign === "[")) {
      frames.push(frame(sign === "["));
      start = at + 1;
    } else if (frames.length > 1 && (sign === "}" || sign === "]")) {
      frames.pop();
      start = at + 1;
    } else if (frames.length > 1 && sign === ",") {
      last.key = undefined;
      start = at + 1;
    } else if (sign === ":" && last.key === undefined && /^\s|^$/.test(words.slice(at + 1))) {
      last.key = words.slice(start, at).trim().replace(/^(["'])(.*)\1$/, "$2");
      last.keys.push(last.key);
      start = at + 1;
    }
  }
  start += words.slice(start).length - words.slice(start).trimStart().length;
  return { frames, start };
}
