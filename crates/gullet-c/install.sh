#!/bin/sh
# Builds the C library and installs it: install.sh PREFIX. With DESTDIR set, below that folder.
#
#   include/gullet.h
#   lib/libgullet.so.VERSION, libgullet.so.ABI, libgullet.so, libgullet.a
#   lib/pkgconfig/gullet.pc
#   lib/cmake/gullet/gulletConfig.cmake, gulletConfigVersion.cmake
set -eu
[ $# -eq 1 ] || { echo "install.sh PREFIX" >&2; exit 2; }
here=$(cd "$(dirname "$0")" && pwd)
root=$(cd "$here/../.." && pwd)
prefix=${DESTDIR:-}$1
target=${CARGO_TARGET_DIR:-$root/target}
version=$(sed -n 's/^version = "\(.*\)"/\1/p' "$root/Cargo.toml" | head -n 1)
major=${version%%.*}
rest=${version#*.}
minor=${rest%%.*}
abi=$(sed -n 's/^const ABI: u32 = \([0-9]*\);/\1/p' "$here/build.rs")
static_libs="-lgcc_s -lutil -lrt -lpthread -lm -ldl -lc"

(cd "$root" && CARGO_TARGET_DIR="$target" cargo build --quiet --locked --profile c -p gullet-c --lib)

mkdir -p "$prefix/include" "$prefix/lib/pkgconfig" "$prefix/lib/cmake/gullet"
cp "$here/include/gullet.h" "$prefix/include/gullet.h"

shared="$prefix/lib/libgullet.so.$version"
cp "$target/c/libgullet_c.so" "$shared"
strip --strip-unneeded "$shared"
ln -sf "libgullet.so.$version" "$prefix/lib/libgullet.so.$abi"
ln -sf "libgullet.so.$abi" "$prefix/lib/libgullet.so"

"$here/package/hide.sh" "$target/c/libgullet_c.a" "$here/exports.txt" "$prefix/lib/libgullet.a"

fill() {
    sed -e "s/@VERSION@/$version/g" -e "s/@ABI@/$abi/g" -e "s/@MAJOR@/$major/g" \
        -e "s/@MINOR@/$minor/g" -e "s/@STATIC_LIBS@/$static_libs/g" "$here/package/$1.in" > "$2/$1"
}
fill gullet.pc "$prefix/lib/pkgconfig"
fill gulletConfig.cmake "$prefix/lib/cmake/gullet"
fill gulletConfigVersion.cmake "$prefix/lib/cmake/gullet"
