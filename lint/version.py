"""The version, as the package's metadata has it."""

VERSION = "0.1.0"
