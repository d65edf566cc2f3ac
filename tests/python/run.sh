#!/bin/sh
# Builds the wheel, installs it and runs every test of the Python face; arguments go to pytest.
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
cd "$root"
target=${CARGO_TARGET_DIR:-$root/target}
export CARGO_TARGET_DIR="$target"
python=${PYTHON:-python3}
venv="$target/python-venv"
[ -x "$venv/bin/python" ] || "$python" -m venv "$venv"
stamp="$venv/requirements.txt"
if ! cmp -s tests/python/requirements.txt "$stamp"; then
    "$venv/bin/python" -m pip install --quiet --disable-pip-version-check -r tests/python/requirements.txt
    cp tests/python/requirements.txt "$stamp"
fi

wheels="$target/python-wheels"
rm -rf "$wheels"
"$venv/bin/maturin" build --quiet --release -m python/Cargo.toml -o "$wheels"
wheel=$(echo "$wheels"/*.whl)
size=$(wc -c < "$wheel")
echo "wheel: $size bytes"
[ "$size" -lt 3000000 ]
"$venv/bin/python" -m pip install --quiet --disable-pip-version-check --force-reinstall --no-deps "$wheel"

# A clean environment with nothing but the wheel.
clean="$target/python-clean"
rm -rf "$clean"
"$python" -m venv "$clean"
"$clean/bin/python" -m pip install --quiet --disable-pip-version-check --no-index "$wheel"
(cd "$target" && "$clean/bin/python" "$root/tests/python/example.py")
"$clean/bin/python" -c 'import gullet; print(gullet.card("crates/gullet-cli/jobs/bearing_bracket.toml"))' > /dev/null

PATH="$venv/bin:$PATH" "$venv/bin/python" -m pytest -q -p no:cacheprovider tests/python "$@"
