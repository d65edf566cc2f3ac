#!/bin/sh
# Times of calls from C, through the shared library as installed, in processor time.
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
cd "$root"
target=${CARGO_TARGET_DIR:-$root/target}
export CARGO_TARGET_DIR="$target"
prefix="$target/c-bench"
crates/gullet-c/install.sh "$prefix"
cargo run --quiet --locked -p gullet-c-gen -- --test-table "$prefix/formula_table.c"
cargo build --quiet --locked --profile c -p gullet-c --example parity_rows
"$target/c/examples/parity_rows" formulas 100 "$prefix/rows"
build() {
    out=$1
    shift
    cc -std=c99 -O2 -Wall -Wextra -I"$prefix/include" -Itests/c "$@" -L"$prefix/lib" -lgullet \
        -Wl,-rpath,"$prefix/lib" -o "$prefix/$out"
}
build c_calls benches/c_calls.c
build c_formulas benches/c_formulas.c "$prefix/formula_table.c"
"$prefix/c_calls"
"$prefix/c_formulas" "$prefix/rows"
