// What a JSON Schema allows at the caret, for completion while no server runs.
import { caret } from "./caret.js";

const KINDS = [
  [/\.programme\.ya?ml$/, "programme"],
  [/\.athlete\.ya?ml$/, "athlete"],
  [/\.exercises\.ya?ml$/, "exercises"],
  [/^spotline\.yaml$/, "team"],
  [/^Untitled-\d+$/, "programme"],
];

/** The name of the schema of a file, by its own name; undefined for a file of another kind. */
export function schemaOf(name) {
  return KINDS.find(([pattern]) => pattern.test(name))?.[1];
}

/**
 * What may be written at a caret: `[{label, insert, kind: "key" | "value", detail, start}]`, `start` being the
 * column from which it replaces the line.
 */
export function offered(schema, lines, row, column) {
  const at = caret(lines, row, column);
  if (!at) return [];
  let here = [schema];
  for (const step of at.path) here = here.flatMap((one) => below(schema, one, step));
  const keys = at.takesKey ? here.flatMap((one) => keysOf(schema, one, at.siblings)) : [];
  const values = at.takesValue ? here.flatMap((one) => valuesOf(schema, one)) : [];
  const all = new Map([...keys, ...values].map((one) => [one.label, { ...one, start: at.start }]));
  return [...all.values()];
}

/** A schema as the schemas it may amount to, references followed; `keys` are those written beside. */
function branches(root, schema, keys = new Set()) {
  if (!schema || typeof schema !== "object") return [];
  const { $ref, if: condition, then, else: otherwise, ...own } = schema;
  const wanted = condition?.required ?? [];
  const holds = wanted.length > 0 && wanted.every((key) => keys.has(key));
  const fails = wanted.length > 0 && keys.size > 0 && !holds;
  return [
    own,
    ...($ref ? branches(root, followed(root, $ref), keys) : []),
    ...(fails ? [] : branches(root, then, keys)),
    ...(holds ? [] : branches(root, otherwise, keys)),
  ];
}

function followed(root, reference) {
  return reference
    .split("/")
    .slice(1)
    .reduce((schema, name) => schema[name], root);
}

/** What stands under a key, or under each point of a list where `step` is null. */
function below(root, schema, step) {
  return branches(root, schema).flatMap((one) =>
    [step === null ? one.items : (one.properties?.[step] ?? one.additionalProperties)].filter(Boolean),
  );
}

function keysOf(root, schema, siblings) {
  return branches(root, schema, siblings).flatMap(({ properties = {} }) =>
    Object.entries(properties)
      .filter(([key, value]) => value && !siblings.has(key))
      .map(([key, value]) => ({ label: key, insert: `${key}: `, kind: "key", detail: value.description ?? "" })),
  );
}

function valuesOf(root, schema) {
  return branches(root, schema).flatMap((one) =>
    (one.enum ?? (one.type === "boolean" ? [true, false] : (one.examples ?? []))).map((value) => ({
      label: String(value),
      insert: String(value),
      kind: "value",
      detail: one.description ?? "",
    })),
  );
}
