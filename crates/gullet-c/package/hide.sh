#!/bin/sh
# One archive that shows nothing but gullet_ names, so that two Rust libraries can be linked into one
# program: hide.sh ARCHIVE NAMES OUT, where NAMES is a file with a name to keep a line.
set -eu
[ $# -eq 3 ] || { echo "hide.sh ARCHIVE NAMES OUT" >&2; exit 2; }
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
undefined=$(sed 's/^/-u /' "$2" | tr '\n' ' ')
# shellcheck disable=SC2086
ld -r -o "$work/gullet.o" $undefined "$1"
# Bitcode of the compiler's own library makes plugins of ar and nm stumble. The reference to the
# personality gets a name of its own, or the linker would merge it with another library's.
objcopy --redefine-sym DW.ref.rust_eh_personality=DW.ref.gullet_eh_personality \
    --strip-debug -R .llvmbc -R .llvmcmd --wildcard --keep-global-symbol='gullet_*' "$work/gullet.o"
rm -f "$3"
ar rcs "$3" "$work/gullet.o"
