#!/bin/sh
# Runs studies on distributed engines with several processes, one of them killed in mid-run. Needs
# Java 17 for Spark and some 900 MB for its own environment; arguments go to pytest.
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
cd "$root"
target=${CARGO_TARGET_DIR:-$root/target}
export CARGO_TARGET_DIR="$target"
export PIP_DISABLE_PIP_VERSION_CHECK=1 PIP_QUIET=1
python=${PYTHON:-python3}
venv="$target/engines-venv"
[ -x "$venv/bin/python" ] || "$python" -m venv "$venv"
stamp="$venv/requirements.txt"
if ! cmp -s tests/engines/requirements.txt "$stamp"; then
    "$venv/bin/python" -m pip install -r tests/engines/requirements.txt
    cp tests/engines/requirements.txt "$stamp"
fi

# The wheel that tests/python/run.sh built is taken where it is there.
newest() { ls -t "$target"/python-wheels/*.whl 2>/dev/null | head -n 1; }
wheel=$(newest)
if [ -z "$wheel" ] || [ -n "${GULLET_BUILD_WHEEL:-}" ]; then
    "$venv/bin/python" -m pip install "maturin>=1.16,<2"
    "$venv/bin/maturin" build --quiet --release -m python/Cargo.toml -o "$target/python-wheels"
    wheel=$(newest)
fi
"$venv/bin/python" -m pip install --force-reinstall --no-deps "$wheel"
"$venv/bin/python" -m pytest -q -p no:cacheprovider tests/engines "$@"
