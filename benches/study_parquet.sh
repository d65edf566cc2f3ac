#!/bin/sh
# Times a study from Parquet to Parquet against only reading and writing the same rows.
#
#   benches/study_parquet.sh [ROWS] [FOLDER]
#
# ROWS is 1000000 where it is not given; a hundred million take 6 GB in FOLDER, which is under the
# build folder where it is not given. Prints seconds, ratios and peak memory; judges nothing.
set -eu
rows=${1:-1000000}
root=$(cd "$(dirname "$0")/.." && pwd)
target=${CARGO_TARGET_DIR:-$root/target}
folder=${2:-$target/study_parquet}
mkdir -p "$folder"
cd "$root"
cargo build --release --quiet --locked --package gullet-cli --bins --example parquet_rows
gullet=$target/release/gullet
plain=$target/release/examples/parquet_rows

"$plain" write "$rows" "$folder/in.parquet"

# Runs a command; leaves its seconds and its peak memory in KiB in `seconds` and `memory`.
timed() {
    start=$(date +%s.%N)
    "$@" >/dev/null &
    child=$!
    memory=0
    while kill -0 "$child" 2>/dev/null; do
        now=$(awk '/^VmHWM:/ { print $2 }' "/proc/$child/status" 2>/dev/null || true)
        [ "${now:-0}" -gt "$memory" ] && memory=$now
        sleep 0.05
    done
    wait "$child"
    seconds=$(echo "$(date +%s.%N) $start" | awk '{ printf "%.2f", $1 - $2 }')
}

timed "$gullet" study "$folder/in.parquet" "$folder/out.parquet" \
    --set operation=side-milling --set cutter_form=square --set cutter_material=HSS \
    --set cutter_teeth=4 --set cutter_flute_length='20 mm' --set cutter_stick_out='22 mm' \
    --set clamping_force='20 kN' --set grip_depth='20 mm' --set part_height='30 mm' \
    --set practice=experienced --summary
study=$seconds
echo "study                          $study s, $memory KiB at most"
timed "$plain" copy "$folder/in.parquet" "$folder/copy.parquet"
rows_alone=$seconds
echo "reading and writing IN         $rows_alone s, $memory KiB at most"
timed "$plain" copy "$folder/out.parquet" "$folder/copy.parquet"
results=$seconds
echo "reading and writing OUT        $results s, $memory KiB at most"
echo "$study $rows_alone $results" | awk '{
    printf "study over reading IN and writing OUT: between %.2f and %.2f\n", $1 / ($2 + $3), $1 / $3
    printf "study over copying IN: %.2f\n", $1 / $2 }'
rm -f "$folder/copy.parquet"
