#!/bin/sh
# Measures the side milling over columns beside numpy, polars, C and a copy; prints ratios.
#
#   sh benches/side_by_side/run.sh [--rounds N] [--rows N] [--no-growth | --growth-alone] [--largest N]
#
# Needs cargo, gcc with glibc's vector maths library, python3 with venv, and PyPI. Leaves everything
# it builds under the target directory.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
root=$(cd "$here/../.." && pwd)
target=${CARGO_TARGET_DIR:-$root/target}
work=$target/side-by-side
mkdir -p "$work"

cargo build --quiet --release --package gullet --example side_by_side --manifest-path "$root/Cargo.toml"
gcc -O3 -march=native -ffast-math -shared -fPIC "$here/loop.c" -o "$work/libloop_fast.so" -lmvec -lm
gcc -O3 -march=native -shared -fPIC "$here/loop.c" -o "$work/libloop_plain.so" -lm

python=$work/venv/bin/python
if ! cmp -s "$here/requirements.txt" "$work/requirements.txt"; then
    python3 -m venv "$work/venv"
    "$python" -m pip install --quiet --disable-pip-version-check -r "$here/requirements.txt"
    cp "$here/requirements.txt" "$work/requirements.txt"
fi

PYTHONDONTWRITEBYTECODE=1 "$python" "$here/run.py" \
    --kernel "$target/release/examples/libside_by_side.so" --loops "$work" "$@"
