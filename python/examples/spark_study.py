"""A study over a folder of Parquet files on Spark.

    python spark_study.py ROWS RESULTS [MASTER]

Each executor computes its batches with ``gullet.study_batches``; the results are written as Parquet,
a file a task. The totals are sums of integers, so that the order of the tasks changes nothing.
"""

from __future__ import annotations

import os
import sys
from typing import Any

import pyarrow
from pyspark.sql import DataFrame, SparkSession
from pyspark.sql import functions as f
from pyspark.sql.pandas.types import from_arrow_schema, to_arrow_schema

import gullet
from study_constants import CONSTANTS


def session(master: str) -> SparkSession:
    # Executors run this Python, where gullet is installed, and stay on this machine.
    os.environ["PYSPARK_PYTHON"] = sys.executable
    os.environ.setdefault("SPARK_LOCAL_IP", "127.0.0.1")
    settings = SparkSession.builder.master(master).appName("study").config("spark.ui.enabled", "false")
    return settings.getOrCreate()


def study(rows: DataFrame, **constants: Any) -> DataFrame:
    """The rows with their results, computed where the rows are."""
    # A study of no rows tells the columns of the results, and every problem before a task starts.
    nothing = pyarrow.Table.from_batches([], to_arrow_schema(rows.schema))
    results = pyarrow.schema(gullet.study(nothing, dictionaries=False, **constants))
    return rows.mapInArrow(
        lambda batches: gullet.study_batches(batches, **constants), from_arrow_schema(results)
    )


def totals(results: DataFrame) -> dict[str, Any]:
    """Rows by status, and the time in the cut in whole nanoseconds."""
    nanoseconds = f.round(f.col("time_s") * 1e9).cast("decimal(38,0)")
    rows = results.groupBy("status").agg(f.count("*").alias("rows"), f.sum(nanoseconds).alias("time"))
    found = rows.collect()
    return {
        "rows": {row["status"]: row["rows"] for row in found},
        "cutting_time_nanoseconds": sum(int(row["time"] or 0) for row in found),
    }


def main() -> None:
    source, target = sys.argv[1:3]
    spark = session(sys.argv[3] if len(sys.argv) > 3 else "local[*]")
    study(spark.read.parquet(source), **CONSTANTS).write.mode("overwrite").parquet(target)
    print(totals(spark.read.parquet(target)))
    spark.stop()


if __name__ == "__main__":
    main()
