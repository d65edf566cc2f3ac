#!/bin/sh
# Times of calls from C, through the shared library as installed.
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
target=${CARGO_TARGET_DIR:-$root/target}
prefix="$target/c-bench"
"$root/crates/gullet-c/install.sh" "$prefix"
cc -std=c99 -O2 -Wall -Wextra -I"$prefix/include" "$root/benches/c_calls.c" -L"$prefix/lib" -lgullet \
    -Wl,-rpath,"$prefix/lib" -o "$prefix/c_calls"
"$prefix/c_calls"
