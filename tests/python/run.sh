#!/bin/sh
# Builds the wheel and the source distribution, installs each into a clean environment, and runs
# every test of the Python face; arguments go to pytest.
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
cd "$root"
target=${CARGO_TARGET_DIR:-$root/target}
export CARGO_TARGET_DIR="$target"
export PIP_DISABLE_PIP_VERSION_CHECK=1 PIP_QUIET=1
python=${PYTHON:-python3}
venv="$target/python-venv"
[ -x "$venv/bin/python" ] || "$python" -m venv "$venv"
stamp="$venv/requirements.txt"
if ! cmp -s tests/python/requirements.txt "$stamp"; then
    "$venv/bin/python" -m pip install -r tests/python/requirements.txt
    cp tests/python/requirements.txt "$stamp"
fi

built="$target/python-wheels"
rm -rf "$built"
"$venv/bin/maturin" build --quiet --release -m python/Cargo.toml -o "$built"
"$venv/bin/maturin" sdist -m python/Cargo.toml -o "$built"
wheel=$(echo "$built"/*.whl)
size=$(wc -c < "$wheel")
echo "wheel: $size bytes"
[ "$size" -lt 5000000 ]
"$venv/bin/python" -m pip install --force-reinstall --no-deps "$wheel"

# A fresh environment with nothing but what is named, and the examples run in it.
installed() {
    clean="$target/python-clean"
    rm -rf "$clean"
    "$python" -m venv "$clean"
    "$clean/bin/python" -m pip install "$@"
    (cd "$target" && "$clean/bin/python" -I "$root/tests/python/installed.py")
}

installed --no-index "$wheel"
installed ./python
# The source distribution, unpacked where cargo finds what it built before.
source="$target/python-source"
rm -rf "$source"
mkdir "$source"
tar -xzf "$built"/*.tar.gz -C "$source"
MATURIN_PEP517_ARGS="--profile dev" installed "$(echo "$source"/gullet-*)[arrays]"

PATH="$venv/bin:$PATH" "$venv/bin/python" -m pytest -q -p no:cacheprovider tests/python "$@"
