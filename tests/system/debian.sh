# Sourced by the scripts beside it: debian PACKAGE ... installs those of Debian's packages that are missing. Needs root then.

installed() {
    dpkg-query --show --showformat='${Status}' "$1" 2>/dev/null | grep -q '^install ok installed$'
}

debian() {
    local missing=() package
    for package in "$@"; do
        installed "$package" || missing+=("$package")
    done
    if [ ${#missing[@]} -gt 0 ]; then
        echo "Installing ${missing[*]}"
        apt-get update -qq
        DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${missing[@]}" >/dev/null
    fi
}
