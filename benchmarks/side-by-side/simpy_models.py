"""The season of rounds in SimPy 3.

Run by side_by_side.py; prints model,program,seconds,result.
"""

import importlib.util
import json
import os
import sys
import time
from datetime import date

ROUNDS_FOLDER = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..", "tests", "Published", "other-engines")


def load_rounds():
    spec = importlib.util.spec_from_file_location("rounds", os.path.join(ROUNDS_FOLDER, "rounds.py"))
    rounds = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(rounds)
    return rounds


def spring_batches(rounds, plan):
    """The trays of the spring example by their planned dates, with no luck, no weather, no flats: less than BenchSim plays."""
    opens = date.fromisoformat(plan["opens"])
    opens = opens.toordinal() - opens.weekday()

    def day(text):
        return date.fromisoformat(text).toordinal() - opens

    batches = []
    for row in plan["batches"]:
        sow, table, out = day(row["sow"]), day(row["table"]), day(row["set_out"])
        off = day(row["off_mat"]) if row["off_mat"] else sow
        benches = ["main-bench", "overflow-bench"]
        batches.append(rounds.Batch(row["id"], row["trays"], sow, out, row["off_mat"] is not None, 15 * (off - sow), table - off, out - table, benches))
    places = {("mat" if space["kind"] == "mat" else space["id"]): space["places"] for space in plan["spaces"]}
    return batches, places


def best(model, play, times):
    shortest, answer = 1e9, None
    for _ in range(times):
        start = time.perf_counter()
        answer = play()
        shortest = min(shortest, time.perf_counter() - start)
    print(f"{model},SimPy 3,{shortest!r},{answer!r}", flush=True)


def main():
    folder = sys.argv[1]
    rounds = load_rounds()

    def went_out(trays):
        return sum(1 for tray in trays if tray.space == "field")

    batches = rounds.read()
    rules = dict(days_off=rounds.DAYS_OFF, sow_wait=3, give_up=10, table_lead=2)
    best("rounds", lambda: went_out(rounds.play(batches, rounds.PLACES, **rules)), 100)

    with open(os.path.join(folder, "spring.json"), encoding="utf-8") as file:
        spring, places = spring_batches(rounds, json.load(file))
    best("spring", lambda: went_out(rounds.play(spring, places)), 100)


if __name__ == "__main__":
    main()
