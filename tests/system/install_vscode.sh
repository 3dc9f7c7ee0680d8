#!/usr/bin/env bash
# Installs VS Code as a server with a browser to look at it, and packages the extension: install_vscode.sh FOLDER
# Needs node 20 with its headers, npm, and root where one of Debian's packages is missing.
set -euo pipefail

here="$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)"
folder="$1/vscode"
code_server=4.100.3
playwright=1.65.1

if ! node --eval 'process.exit(parseInt(process.versions.node) < 20 ? 1 : 0)'; then
    echo "code-server $code_server needs node 20; this is $(node --version)." >&2
    exit 1
fi
npm_install() {
    npm install --ignore-scripts --no-save --no-audit --no-fund --loglevel=error "$@"
}

source "$here/debian.sh"
debian chromium ripgrep g++ make fontconfig fonts-dejavu-core

# Nothing below takes part in code-server's own set-up, which downloads; what it would compile is compiled here.
install_code_server() {
    local gyp headers server
    mkdir -p "$folder"
    npm_install --prefix "$folder" "code-server@$code_server" "playwright-core@$playwright"
    server="$folder/node_modules/code-server/lib/vscode"
    (cd "$server" && npm_install --omit=dev)
    (cd "$server/extensions" && npm_install --omit=dev)

    gyp="$(npm root --global)/npm/node_modules/node-gyp/bin/node-gyp.js"
    headers="$(node --print 'require("path").dirname(require("path").dirname(process.execPath))')"
    export npm_config_nodedir="$headers" JOBS=2
    npm rebuild --loglevel=error --prefix "$folder" argon2 >/dev/null
    for module in @vscode/spdlog native-watchdog node-pty; do
        (cd "$server/node_modules/$module" && node "$gyp" rebuild --silent --nodedir="$headers" >/dev/null)
    done
    mkdir -p "$server/node_modules/@vscode/ripgrep/bin"
    ln -sfn "$(command -v rg)" "$server/node_modules/@vscode/ripgrep/bin/rg"
    ln -sfn node_modules "$server/node_modules.asar"
    echo "$versions" >"$folder/versions"
}

versions="code-server $code_server playwright-core $playwright"
if [ "$(cat "$folder/versions" 2>/dev/null)" != "$versions" ]; then
    echo "Installing $versions"
    install_code_server
fi

npm --prefix "$here/../../lint/editor/vscode" --silent run package
