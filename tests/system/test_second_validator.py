"""The printed schemas in ajv (npm): the reader's verdict on every spelling and form, and on a thousand mutations."""

from __future__ import annotations

import json
import subprocess
from pathlib import Path

from spotline import schema as schemas
from spotline.tests.outside.schema_cases import mutations, spellings, trials

ASK = """\
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
const [folder, cases] = process.argv.slice(1);
const Ajv = createRequire(`${folder}/`)("ajv/dist/2020").default;
const { printed, asked } = JSON.parse(readFileSync(cases, "utf8"));
const held = {};
const verdict = ([name, kind, data]) => {
  const key = `${name} ${kind}`;
  const schema = kind ? { $ref: `#/$defs/${kind}`, $defs: printed[name].$defs } : printed[name];
  held[key] ??= new Ajv({ strict: false, logger: false }).compile(schema);
  return held[key](data);
};
process.stdout.write(JSON.stringify(asked.map(verdict)));
"""


def test_it_gives_the_readers_verdict(installed: Path, tmp_path: Path) -> None:
    cases = [*spellings(), *trials(), *mutations()]
    asked = tmp_path / "cases.json"
    printed = {name: json.loads(schemas.text(name)) for name in schemas.names()}
    asked.write_text(
        json.dumps({"printed": printed, "asked": [case[:3] for case in cases]}), encoding="utf-8"
    )
    folder = installed / "sheets"
    done = subprocess.run(
        ["node", "--input-type=module", "-e", ASK, str(folder), str(asked)],
        capture_output=True,
        text=True,
        timeout=600,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    verdicts = json.loads(done.stdout)
    assert [case[:3] for case, said in zip(cases, verdicts, strict=True) if said != case[3]] == []
