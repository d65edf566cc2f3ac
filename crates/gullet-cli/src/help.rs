//! `gullet help`: what each command does.

use crate::answer::Answer;
use crate::arguments::{Spec, read};
use gullet::error::{Result, unknown_name};

/// Each command with its line in the overview and its own page.
const PAGES: &[(&str, &str, &str)] = &[
    (
        "card",
        "the set-up card of a job, or the cards of a route",
        "gullet card JOB [--format text|json|html] [--output FILE] [--overlay FILE]... [--units inch|metric] [--steps]

Plans the job and writes its set-up card: what to set, how deep each pass, which limit binds and why.
A route file (route = \"squared-block\") gives a summary page and a card for each clamping: order of
the faces, datum, parallels, stock, where to measure, time and cost. Sizes measured so far, in its
section [measured], plan what is left anew.

  JOB                a job or route file in TOML, in JSON where its name ends in .json; - reads standard input
  --format FORMAT    text, json or html; without it the ending of --output decides, else text
  --output FILE      write there, all or nothing, instead of standard output
  --overlay FILE     a shop's own table (CSV) laid over the built-in ones; may be repeated
  --units SYSTEM     print in inch or metric units instead of the job's own
  --steps            html: pages with every worked step behind the card; text: of a route, too
",
    ),
    (
        "study",
        "cuts over the rows of a table, CSV or Parquet",
        "gullet study IN OUT [--job FILE] [--set NAME=VALUE]... [--columns usual|all|NAME,...] [--units inch|metric]
             [--overlay FILE]... [--pass-through NAME]... [--threads N]
             [--spread NAME=SPREAD]... [--draws N] [--seed N] [--quantiles LIST] [--summary] [--json]

Computes a cut for every row of IN and writes the rows with their results to OUT.

  IN                 CSV or Parquet, told by its first bytes; - reads CSV from standard input
  OUT                a name that ends in .csv or .parquet, or - for CSV on standard output; it appears
                     when it is whole, and what stood there before stays until then
  --job FILE         a job file gives what no column and no --set gives
  --set NAME=VALUE   the same in every row: --set material=6061 --set axial_depth='1/4 in'
  --columns LIST     results to write: usual, all, or names with commas between them
  --units SYSTEM     units of the results, the job's own without it
  --overlay FILE     a shop's own table (CSV) laid over the built-in ones; may be repeated
  --pass-through NAME  leave a column alone though its name looks like that of an input
  --threads N        threads that compute; every processor without it
  --spread NAME=SPREAD  a factor on cutting_force, wear_factor, feed, speed or an input that is drawn:
                     0.9..1.1 even between two ends, 0.9..1..1.2 likeliest at the middle one,
                     sigma 0.1 log-normal; quantiles of every result stand behind it, time_p95_s
  --draws N          draws of a row, 1000 without it; --seed N  another sequence of draws
  --quantiles LIST   0.05,0.5,0.95 without it
  --summary          print totals: rows by error and by limit, cutting time, energy, cost
  --json             print the totals as JSON

Columns of numbers have their unit behind the name: axial_depth_mm, cutter_diameter_in,
spindle_speed_rpm. Columns of names: material, machine, practice, operation, pass, direction,
cutter_material, cutter_form. cost_per_hour adds a cost. Other columns are passed through.
Rows are milling cuts. With --set operation=drilling, or another operation of its own, the inputs of
that operation are the columns: diameter_mm, depth_in, hole; a table that mixes such operations is
split by them.
A row that cannot be computed gets the code of its error in the column status; the rest is computed.

  gullet study crates/gullet-cli/studies/stop_blocks.csv stops.csv --job crates/gullet-cli/jobs/gib_strip.toml --summary
  gullet study crates/gullet-cli/studies/holes.csv holes.csv --set operation=drilling --set machine=small-cnc-mill --set cutter_material=HSS
",
    ),
    (
        "cost",
        "the economic speed of a cut, and what a lot takes and costs",
        "gullet cost speed NAME=VALUE... [--machine NAME | --speeds LIST] [--units inch|metric] [--json]
gullet cost lot NAME=VALUE... [--lots LIST] [--steps] [--units inch|metric] [--json]

speed: the speeds of least cost and of least time, what a part takes and costs there, and with a
spindle the best of its speeds, its neighbours, and what the spindle's speed costs. Names:
  machine_rate, change_time, taylor_speed (for a life of one minute), taylor_exponent, diameter,
  travel, feed_per_rev; edge_cost, handling_time, in_cut_share where they are not 0, 0 and 1

  --machine NAME     a machine of `gullet list machines`
  --speeds LIST      steps of a spindle, rising: --speeds '70 rpm, 110 rpm, 176 rpm'

lot: time and cost of a part, share by share, and of the lot. Names:
  lot_size, machine_rate, cutting_time; setup_time, handling_time, moving_time, change_time, edge_cost,
  parts_per_edge, gauging_time, gauged_every, material_cost, and one of each of these pairs:
  allowance_of_normal_time or allowance_of_standard_time, wright_rate or crawford_rate

  --lots LIST        lots of several sizes: --lots 1,10,100 in place of lot_size
  --steps            every formula with its numbers

  gullet cost lot machine_rate='60 money/h' setup_time='30 min' cutting_time='4 min' --lots 1,10,100
",
    ),
    (
        "operate",
        "one operation described, or computed with limits and worked steps",
        "gullet operate OPERATION [NAME=VALUE]... --material ID [--tool MATERIAL] [--machine NAME|FILE.json] [--practice NAME]
               [--title TEXT] [--format text|json|html] [--output FILE] [--overlay FILE]... [--units inch|metric] [--steps]

Without inputs: what the operation takes and gives, and an example to paste.
With inputs: its card; settings the machine really has, what follows, limits, worked steps, cautions.

  --material ID      the work material; gullet list materials
  --tool MATERIAL    what the edges are made of; HSS without it
  --machine NAME     a built-in machine, or a JSON file with the keys of a job's machine; that of the
                     operation's example without it
  --practice NAME    training without it
  --format FORMAT    text, json or html; without it the ending of --output decides, else text
  --steps            html: pages with every worked step behind the card

  gullet operate drilling diameter='8.5 mm' depth='22 mm' --material 1018 --machine small-cnc-mill
",
    ),
    (
        "fit",
        "own readings: tool life after Taylor, cutting force after Kienzle",
        "gullet fit taylor|extended-taylor|kienzle READINGS.csv [--confidence SHARE] [--source TEXT] [--units inch|metric]
           [--criterion TEXT] [--reference-feed LENGTH] [--reference-depth LENGTH] [--json]
           [--output FILE --material ID [--tool-material NAME] [--id ID] [--overlay FILE]...]

Fits a law to readings by least squares of their logarithms and tells it with the limits of its
confidence, the scatter and the residuals; refuses readings that cannot carry it, with the reason.

  taylor             columns cutting_speed and tool_life: v T^n = C, C for a life of one minute
  extended-taylor    feed_per_rev besides, and depth_of_cut where there is such a column:
                     v T^n (f/f_0)^a (d/d_0)^b = C
  kienzle            chip_thickness and force_per_width (cutting force over width of chip): the pair
                     k_c1.1 and m_c, which belong together
  READINGS.csv       a row a reading, the unit behind each name: cutting_speed_m_per_min,
                     tool_life_min, feed_per_rev_mm, force_per_width_n_per_mm; - reads standard input
  --confidence SHARE of the limits, two-sided: '95 %' without it
  --source TEXT      where the readings come from; the file's name without it
  --criterion TEXT   when an edge counted as worn: 'VB 0.3 mm', 'ISO 3685 VB 0.3 mm', or words
  --reference-feed LENGTH, --reference-depth LENGTH
                     f_0 and d_0 that C is for; the geometric means of the readings without them
  --output FILE      writes what is fitted as a shop's own table, for --overlay of other commands
  --material ID      the material that it is for; of kienzle its row with the new pair in the first place
  --tool-material NAME  of the edges, such as HSS: needed for a table of tool life
  --id ID            id of the row of tool life; own-1 without it
  --overlay FILE     a shop's own table (CSV) laid over the built-in ones; may be repeated

The law gives median lives: half of all edges last longer. The mean is exp(s^2/2) times as long.

  gullet fit extended-taylor tests/data/lathe1.csv --reference-feed '1 mm'
",
    ),
    (
        "tap-drill",
        "drills for a thread, with the percentage of thread each leaves",
        "gullet tap-drill major_diameter=VALUE pitch=VALUE [thread_percent=VALUE] [smallest_percent=VALUE]
               [largest_percent=VALUE] [--basis chart|overlap|forming] [--sets LIST] [--overlay FILE]...
               [--units inch|metric] [--json]

Lists the drills that leave an admissible percentage of thread, the one nearest to thread_percent first.
For 20 threads per inch the pitch is 1/20 in. Without them the percentages are 75, 60 and 83 %, of a
forming tap 65, 55 and 75 % (common practice).

  --basis BASIS      what percentages are shares of: chart, as tap-drill charts reckon; overlap, that of
                     ISO and UN threads; forming, for a tap that forms
  --sets LIST        metric, fraction, number, letter, own, with commas between them; all without it
  --overlay FILE     a shop's own drills (CSV) laid over the built-in ones; may be repeated

  gullet tap-drill major_diameter='1/4 in' pitch='1/20 in' --sets fraction,number,letter
",
    ),
    (
        "explain",
        "a formula described, or worked through with numbers",
        "gullet explain FORMULA [NAME=VALUE]... [--units inch|metric] [--json]

Without values: the formula's equation, arguments, ranges, defaults, source and example.
With values: the worked step, redone by hand with the same numbers.

  gullet explain table_feed feed_per_tooth='0.004 in' teeth=4 spindle_speed='800 rpm' --units inch
",
    ),
    (
        "evaluate",
        "the bare number of a formula",
        "gullet evaluate FORMULA NAME=VALUE... [--unit UNIT] [--json]

Prints the value with 17 significant digits in UNIT, in the SI unit without it (money per time:
money/h). With --json the unit stands beside the number.

  gullet evaluate spindle_speed cutting_speed='90 ft/min' diameter='1/2 in' --unit rpm
",
    ),
    (
        "check",
        "worked examples against what their sources print",
        "gullet check [CASES.csv]... [--builtin] [--verbose] [--json]

Runs files of worked examples and tells every row that is missed, then the counts.
The columns are id,formula,arguments,expected,rtol,source,provenance,note,status; a row known to
be missed has the reason in status, as \"missed: reason\". A mark on a row that passes is a failure.

  --builtin    run the embedded published examples
  --verbose    tell rows that pass, too
",
    ),
    (
        "list",
        "materials, machines, practices, formulas, sources, units, operations",
        "gullet list materials|machines|practices|formulas|sources|units|operations [--json] [--overlay FILE]... [--units inch|metric]

Lists what there is to choose from, with a shop's own tables laid over the built-in ones.
",
    ),
    (
        "reference",
        "every formula and operation on one page",
        "gullet reference [--format html|text] [--output FILE]

Prints all formulas with equation, arguments, ranges, validity, source and example, and all operations
with inputs, results, limits and cautions: one HTML page without script or network, or plain text.

  gullet reference --output reference.html
",
    ),
    (
        "schema",
        "the form of a job or route file as a JSON Schema",
        "gullet schema [job|part|route]

Prints the JSON Schema of a job file, or of a route file, for editors that check while one types.
",
    ),
    (
        "help",
        "this overview, or the page of a command",
        "gullet help [COMMAND]

Prints the overview, or the page of a command; so does --help.
",
    ),
];

const FOOT: &str = "
A value carries its unit: '1/2 in', '0.004 in', '12.7 mm', '90 ft/min', '1115 rpm', '15 %'.

Exit codes
  0  done; with a pipe that closed early, too
  1  a worked example is missed, or no plan keeps every limit
  2  wrong command line or input
  3  a file cannot be read or written
  4  the tables hold no value for what is asked
130  interrupted; nothing half-written is left
Of several, 3 goes before 2, 2 before 4, 4 before 1. Problems stand on standard error, a line
each and all at once; as JSON with --json or --format json.

Numbers are starting values. The machine's manual, the shop's rules, local codes and the
responsible instructor go before them.
";

/// The names of the commands.
pub fn names() -> impl Iterator<Item = &'static str> {
    PAGES.iter().map(|(name, _, _)| *name)
}

/// The page of a command.
pub fn of(command: &str) -> Option<String> {
    PAGES
        .iter()
        .find(|(name, _, _)| *name == command)
        .map(|(_, _, page)| (*page).to_owned())
}

/// Every command in a line, units, exit codes.
pub fn overview() -> String {
    let mut text = String::from(
        "gullet: machining speeds and feeds, limits, passes and set-up cards\n\n  gullet COMMAND ...\n\n",
    );
    for (name, what, _) in PAGES {
        text += &format!("  {name:<9} {what}\n");
    }
    text + FOOT
}

pub fn run(words: &[String]) -> Result<Answer> {
    let spec = Spec {
        flags: &[],
        operand: "COMMAND",
        least: 0,
        most: 1,
    };
    let given = read(&spec, words)?;
    match given.operands.first() {
        None => Ok(Answer::text(overview())),
        Some(name) => of(name)
            .map(Answer::text)
            .ok_or_else(|| unknown_name("command", name, names()).into()),
    }
}
