#!/bin/sh
# Builds and tests the C face: header, library, package, examples, and what valgrind, the address
# sanitiser and abidiff say. Ends with the counts. Tools that are missing are installed where this
# may be done (root, apt-get, GULLET_NO_INSTALL not set); else what needs them is skipped and named.
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
cd "$root"
target=${CARGO_TARGET_DIR:-$root/target}
export CARGO_TARGET_DIR="$target" RUST_BACKTRACE=0
tests=$root/tests/c
crate=$root/crates/gullet-c
jobs=$root/crates/gullet-cli/jobs
job=$jobs/bearing_bracket.toml
part=$jobs/parts/tailstock_post.toml
work=$target/c-tests
mkdir -p "$work"
started=$(date +%s)
passed=0
failed=0
skipped=""

has() { command -v "$1" > /dev/null 2>&1; }

# One check of the whole: a line that says what holds or not.
check() {
    name=$1
    shift
    if "$@" > "$work/check.log" 2>&1; then
        passed=$((passed + 1))
    else
        failed=$((failed + 1))
        echo "FAILED: $name"
        tail -n 40 "$work/check.log"
    fi
}

# A test program: its own counts are added; one that ends otherwise counts as a failure.
run() {
    ended=0
    "$@" > "$work/run.log" 2>&1 || ended=$?
    counts=$(sed -n 's/^[a-z]*: \([0-9]*\) passed, \([0-9]*\) failed$/\1 \2/p' "$work/run.log" | tail -n 1)
    tail -n 25 "$work/run.log"
    if [ -z "$counts" ]; then
        failed=$((failed + 1))
        echo "FAILED: $* ended with $ended and no counts"
        return
    fi
    passed=$((passed + ${counts% *}))
    failed=$((failed + ${counts#* }))
    if [ "$ended" -ne 0 ] && [ "${counts#* }" -eq 0 ]; then
        failed=$((failed + 1))
        echo "FAILED: $* ended with $ended"
    fi
}

fails() { ! "$@"; }
same() { diff "$1" "$2"; }

missing=""
has valgrind || missing="$missing valgrind"
has abidiff || missing="$missing abigail-tools"
has cmake || missing="$missing cmake"
has pkg-config || missing="$missing pkg-config"
if [ -n "$missing" ] && [ "$(id -u)" = 0 ] && [ -z "${GULLET_NO_INSTALL:-}" ] && has apt-get; then
    # shellcheck disable=SC2086
    apt-get install -y -q $missing > "$work/apt.log" 2>&1 || true
fi

# What is generated, and the library.
check "generated files are up to date" cargo run --quiet --locked -p gullet-c-gen -- --check
cargo run --quiet --locked -p gullet-c-gen -- --test-table "$work/formula_table.c"
cargo build --quiet --locked --profile c -p gullet-c --lib
cargo build --quiet --locked --profile c -p gullet-c --example provoke --example parity_rows
shared=$target/c/libgullet_c.so
archive=$target/c/libgullet_c.a
rows=$target/c/examples/parity_rows
"$rows" formulas 10000 "$work/formulas"
"$rows" cut-lines 10000 "$work/cuts"
"$rows" formulas 20 "$work/few_formulas"
"$rows" cut-lines 40 "$work/few_cuts"
names() { nm -D --defined-only "$1" | awk '{print $3}' | sort; }
names "$shared" > "$work/exports.txt"
check "nothing but the listed names is exported" same "$crate/exports.txt" "$work/exports.txt"
check "panic=abort is refused" sh -c "cd '$crate' && rustc --edition 2024 --crate-type lib --emit metadata \
    -C panic=abort -L '$target/c/deps' -o '$work/abort.rmeta' src/lib.rs 2>&1 | grep 'build with panic=unwind'"

# The header in every language it promises.
printf '#include <gullet.h>\nint main(void) { gullet_pass pass = gullet_pass_init(); return (int)pass.operation; }\n' \
    > "$work/header.c"
warn="-Wall -Wextra -Wpedantic -Werror"
for standard in c99 c11 c17 c2x; do
    check "the header as $standard" gcc -std=$standard $warn -I"$crate/include" -c "$work/header.c" -o "$work/header.o"
done
for standard in c++11 c++17 c++20; do
    check "the header as $standard" g++ -x c++ -std=$standard $warn -I"$crate/include" -c "$work/header.c" -o "$work/header.o"
done

# The test programs, against the static library.
libraries="-lgcc_s -lutil -lrt -lpthread -lm -ldl -lc"
build() {
    out=$1
    name=$2
    lib=$3
    shift 3
    source=$tests/test_$name.c
    [ -f "$source" ] || source=$tests/$name.c
    gcc -std=c11 $warn -O1 -g "$@" -I"$crate/include" -I"$tests" "$source" "$work/formula_table.c" \
        "$lib" $libraries -o "$out/$name"
}
for name in pitfalls handles operation host threads parity cases study economics arrow fit planted; do build "$work" $name "$archive"; done
gcc -std=c11 $warn -I"$crate/include" "$tests/test_panic.c" -o "$work/panic" \
    "$target/c/examples/libprovoke.so" -Wl,-rpath,"$target/c/examples" -lm
gcc -std=c11 $warn "$tests/test_dlopen.c" -o "$work/dlopen" -ldl
run "$work/pitfalls"
run "$work/handles" "$job"
run "$work/operation" "$part"
run "$work/threads" "$job"
run "$work/parity" "$work/formulas" "$work/cuts" 10000
run "$work/cases" "$root" reference-data/cases/*.csv
run "$work/study"
run "$work/economics"
run "$work/fit" "$root/tests/data/lathe1.csv"
run "$work/arrow"
run "$work/panic"
# Once more out of an archive as it is installed, whose names are hidden.
{ cat "$crate/exports.txt"; echo gullet_provoke_panic; } > "$work/provoke.txt"
"$crate/package/hide.sh" "$target/c/examples/libprovoke.a" "$work/provoke.txt" "$work/libprovoke.a"
gcc -std=c11 $warn -I"$crate/include" "$tests/test_panic.c" "$work/libprovoke.a" $libraries -o "$work/hidden_panic"
run "$work/hidden_panic"
run "$work/dlopen" "$shared"
if has localedef && mkdir -p "$work/locale" && { [ -d "$work/locale/de_DE.UTF-8" ] \
    || localedef -i de_DE -f UTF-8 "$work/locale/de_DE.UTF-8" > /dev/null 2>&1; }; then
    LOCPATH=$work/locale run "$work/host" "$job" de_DE.UTF-8
else
    skipped="$skipped; a locale with a comma (no localedef)"
    run "$work/host" "$job"
fi

# The package, and the examples against its files alone.
prefix=$work/prefix
rm -rf "$prefix" "$work/elsewhere" "$work/source"
check "the package is installed" "$crate/install.sh" "$prefix"
mv "$prefix" "$work/elsewhere"
prefix=$work/elsewhere
check "the installed library exports the listed names" sh -c "nm -D --defined-only '$prefix/lib/libgullet.so' \
    | awk '{print \$3}' | sort | diff '$crate/exports.txt' -"
check "the installed archive shows the listed names" sh -c "nm -g --defined-only '$prefix/lib/libgullet.a' \
    | awk 'NF == 3 {print \$3}' | sort | diff '$crate/exports.txt' -"
check "the soname is that of the ABI" sh -c "readelf -d '$prefix/lib/libgullet.so' | grep -F '[libgullet.so.0]'"
build "$work/elsewhere" handles "$prefix/lib/libgullet.a"
run "$work/elsewhere/handles" "$job"
build "$work/elsewhere" pitfalls "$prefix/lib/libgullet.so" -Wl,-rpath,"$prefix/lib"
run "$work/elsewhere/pitfalls"
mkdir -p "$work/source"
cp "$crate"/examples/*.c "$crate/examples/CMakeLists.txt" "$work/source"
cp "$tests/example.py" "$work/source"
# The block of README.md is a program as it stands.
sed -n '/^```c$/,/^```$/p' README.md | sed '/^```/d' > "$work/source/readme.c"

# What each program must print.
printf '688 rpm, 2.75 in/min\n' > "$work/speed_calculator.txt"
printf '1/4 in  1375.1 rpm\n3/8 in  916.7 rpm\n0 in    out_of_range\n1/2 in  687.5 rpm\n1 in    343.8 rpm\n' > "$work/batch.txt"
cat > "$work/study.txt" << 'END'
 0.5 mm  1294 rpm  497 mm/min  55 N, 9 of 10 from 52 to 63 N  deflection
 1.5 mm  1294 rpm  162 mm/min  62 N, 9 of 10 from 58 to 71 N  deflection
 3.0 mm  limit_exceeded
13.0 mm  out_of_range
END
cat > "$work/table_study.txt" << 'END'
16 columns of 4 rows
3 of 4 rows computed: 100.3 s in the cut, 2.36 kJ, 1.338 of money
3 nearest to deflection
row 1: unknown_name: material = "6062"
END
cp tests/golden/bearing_bracket.txt "$work/card_printer.txt"
# The same digits as the example of the command line and of Python in README.md.
sed -n 's/.* = \(687.55 rpm\)$/\1/p' README.md | head -n 1 > "$work/readme.txt"
examine() {
    program=$1
    expected=$2
    case $expected in
    speed_calculator) set -- "90 ft/min" "1/2 in" 2 "0.002 in" ;;
    card_printer) set -- "$job" ;;
    *) set -- ;;
    esac
    "$program" "$@" > "$work/printed.txt" && diff "$work/$expected.txt" "$work/printed.txt"
}
if has pkg-config; then
    export PKG_CONFIG_PATH="$prefix/lib/pkgconfig"
    check "pkg-config knows the version" pkg-config --exact-version="$(sed -n 's/^version = "\(.*\)"/\1/p' Cargo.toml | head -n 1)" gullet
    for example in speed_calculator card_printer batch study table_study readme; do
        for language in "gcc -std=c11" "g++ -x c++ -std=c++17"; do
            program=$work/source/$example
            # shellcheck disable=SC2046,SC2086
            check "$example, shared, $language" $language $warn "$program.c" -x none $(pkg-config --cflags --libs gullet) \
                -Wl,-rpath,"$prefix/lib" -o "$program"
            check "$example, shared, $language, prints" examine "$program" $example
            # shellcheck disable=SC2046,SC2086
            check "$example, static, $language" $language $warn "$program.c" -x none $(pkg-config --cflags gullet) \
                "$prefix/lib/libgullet.a" $(pkg-config --libs-only-l --static gullet | sed 's/-lgullet//') -o "$program"
            check "$example, static, $language, prints" examine "$program" $example
        done
    done
else
    skipped="$skipped; pkg-config"
fi
if has cmake; then
    check "cmake configures" cmake -S "$work/source" -B "$work/cmake" -DCMAKE_PREFIX_PATH="$prefix" -DCMAKE_BUILD_TYPE=Release
    check "cmake builds" cmake --build "$work/cmake"
    for example in speed_calculator card_printer batch study table_study; do
        for kind in shared_c shared_cpp static_c static_cpp; do
            check "$example by cmake, $kind" examine "$work/cmake/${example}_$kind" $example
        done
    done
    printf 'cmake_minimum_required(VERSION 3.16)\nproject(x C)\nfind_package(gullet 99 REQUIRED CONFIG)\n' > "$work/CMakeLists.txt"
    check "cmake refuses another version" fails cmake -S "$work" -B "$work/cmake-wrong" -DCMAKE_PREFIX_PATH="$prefix"
else
    skipped="$skipped; cmake"
fi
# Beside another Rust library of its own standard library.
printf '#[unsafe(no_mangle)] pub extern "C" fn other(x: f64) -> f64 { format!("{x}").parse().unwrap_or(0.0) }\n' > "$work/other.rs"
printf '#include <gullet.h>\nextern double other(double);\nint main(void) { double n = 0.0; return gullet_spindle_speed(1.0, other(0.25), &n) || n < 1.27; }\n' > "$work/both.c"
check "another Rust library is made" rustc --edition 2024 --crate-type staticlib -O -o "$work/libother.a" "$work/other.rs"
# shellcheck disable=SC2086
check "two Rust libraries in one program" gcc -I"$prefix/include" "$work/both.c" "$prefix/lib/libgullet.a" "$work/libother.a" $libraries -o "$work/both"
check "two Rust libraries in one program run" "$work/both"
# Tables of another library, where the tests of the Python face have installed one.
with_tables=$target/python-venv/bin/python
[ -x "$with_tables" ] || with_tables=python3
if "$with_tables" -c "import pyarrow" > /dev/null 2>&1; then
    check "tables of another library" "$with_tables" "$tests/arrow.py" "$prefix/lib/libgullet.so"
else
    skipped="$skipped; tables of another library (no pyarrow)"
fi
if has python3; then
    check "another runtime calls the shared library" sh -c "cd '$work/source' && python3 example.py '$prefix/lib/libgullet.so'"
else
    skipped="$skipped; python3"
fi

# Memory: clean, and each planted fault is found.
if has valgrind; then
    grind="valgrind -q --error-exitcode=9 --leak-check=full"
    # shellcheck disable=SC2086
    for line in "pitfalls" "handles $job" "operation $part" "parity $work/few_formulas $work/few_cuts 20" \
        "cases $root $(echo "$root"/reference-data/cases/*.csv)" arrow; do
        check "valgrind: ${line%% *}" $grind "$work/"$line
    done
    # A thread that starts others keeps a note of itself until it ends, which the main thread never does.
    check "valgrind: study" $grind --show-leak-kinds=definite --errors-for-leak-kinds=definite "$work/study" 400
    check "valgrind: a panic" $grind "$work/panic"
    check "helgrind: threads" valgrind -q --tool=helgrind --error-exitcode=9 "$work/threads" "$job"
    check "helgrind finds a planted race" sh -c "valgrind -q --tool=helgrind --error-exitcode=9 '$work/threads' '$job' race; [ \$? -eq 9 ]"
    check "valgrind: no planted fault" $grind "$work/planted" 0
    for fault in 1 2 3 4 5 6 7; do
        check "valgrind finds planted fault $fault" sh -c "$grind '$work/planted' $fault; [ \$? -eq 9 ]"
    done
else
    skipped="$skipped; valgrind"
fi
triple=$(rustc -vV | sed -n 's/^host: //p')
case $triple in
x86_64-unknown-linux-gnu | aarch64-unknown-linux-gnu)
    RUSTC_BOOTSTRAP=1 RUSTFLAGS=-Zsanitizer=address cargo build --quiet --locked --target "$triple" -p gullet-c --lib
    asan=$work/asan
    mkdir -p "$asan"
    for name in pitfalls handles operation parity cases study arrow planted; do
        build "$asan" $name "$target/$triple/debug/libgullet_c.a" -fsanitize=address
    done
    run "$asan/pitfalls"
    run "$asan/handles" "$job"
    run "$asan/operation" "$part"
    run "$asan/parity" "$work/few_formulas" "$work/few_cuts" 20
    run "$asan/cases" "$root" reference-data/cases/*.csv
    run "$asan/study" 400
    run "$asan/arrow"
    check "the sanitiser: no planted fault" "$asan/planted" 0
    # It does not see the seventh: here the library and free() share one heap.
    for fault in 1 2 3 4 5 6; do
        check "the sanitiser finds planted fault $fault" sh -c "'$asan/planted' $fault 2>&1 | grep -E 'ERROR: (Address|Leak)Sanitizer'"
    done
    ;;
*) skipped="$skipped; the address sanitiser" ;;
esac

# The ABI: as in the baseline, with nothing gone or changed.
if has abidiff && [ "$triple" = x86_64-unknown-linux-gnu ]; then
    abi() { abidw --no-corpus-path --no-comp-dir-path --no-show-locs --headers-dir "$crate/include" --drop-private-types "$1"; }
    abi "$shared" > "$work/gullet.abi"
    [ -z "${GULLET_WRITE_ABI:-}" ] || cp "$work/gullet.abi" "$crate/gullet.abi"
    check "the ABI is the baseline's" abidiff --no-added-syms "$crate/gullet.abi" "$work/gullet.abi"
    other=$(sed -n "s/.*name='lowering' type-id='\([^']*\)'.*/\1/p" "$work/gullet.abi" | head -n 1)
    sed "s/name='axial_depth_m' type-id='[^']*'/name='axial_depth_m' type-id='$other'/" "$work/gullet.abi" > "$work/changed.abi"
    check "abidiff finds a field of another type" fails abidiff --no-added-syms "$crate/gullet.abi" "$work/changed.abi"
    sed '/<elf-symbol name=.gullet_parse. /d' "$work/gullet.abi" > "$work/removed.abi"
    check "abidiff finds a function that is gone" fails abidiff --no-added-syms "$crate/gullet.abi" "$work/removed.abi"
else
    skipped="$skipped; the ABI (needs abidiff, on x86_64 Linux)"
fi

[ -z "$skipped" ] || echo "skipped: ${skipped#; }"
echo "$passed passed, $failed failed in $(($(date +%s) - started)) s"
[ "$failed" -eq 0 ]
