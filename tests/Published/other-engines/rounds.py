"""The same rounds in SimPy 3: a cut-down tray model with work rounds, the batches of rounds-batches.csv.

    /usr/bin/python3 rounds.py > rounds.csv

One process a tray. A round once each work day hands out places, downstream first: set out, bench to table, mat to bench, sow; within a
step by planned set-out date, planned sow date, batch, time of entry, lowest tray. Day 0 is a Monday. Times are whole thirtieths of a day counted
from the round of day 0, so that there is no rounding: a mat gives 15 degree-days a day, the house 10.

Not in it: flats and potting up, weather that holds, luck, labour, reliefs, throwing out.
"""

import csv
import os
import sys

import simpy

DAY = 30
OUT, TABLE, BENCH, SOW = range(4)


class Site:
    """Places, rules and the trays that ask for a move."""

    def __init__(self, env, places, days_off=(), sow_wait=3, give_up=14, table_lead=3, last_day=190):
        self.env = env
        self.places = dict(places)
        self.held = dict.fromkeys(self.places, 0)
        self.days_off = frozenset(days_off)
        self.sow_wait = sow_wait
        self.give_up = give_up
        self.table_lead = table_lead
        self.last_day = last_day
        self.asking = ([], [], [], [])

    def is_work_day(self, day):
        return day % 7 < 5 and day not in self.days_off

    def ask(self, step, tray):
        asked = self.env.event()
        self.asking[step].append((tray.batch.wanted, tray.batch.sow, tray.batch.id, tray.entered, tray.index, tray, asked))
        return asked

    def clock(self):
        for day in range(self.last_day + 1):
            if self.is_work_day(day):
                yield self.env.timeout(DAY * day - self.env.now)
                yield self.env.timeout(0)  # what falls due at this very instant comes first
                self.round(day)

    def round(self, day):
        for step, choose in ((OUT, self.to_field), (TABLE, self.to_table), (BENCH, self.to_bench), (SOW, self.to_sow)):
            asking = self.asking[step]
            if not asking:
                continue
            asking.sort()
            refused = []
            for request in asking:
                tray, asked = request[-2:]
                place = choose(tray, day)
                if place is None:
                    refused.append(request)
                    continue
                if tray.space is not None:
                    self.held[tray.space] -= 1
                tray.space = place
                tray.entered = self.env.now
                if place in self.held:
                    self.held[place] += 1
                asked.succeed(place)
            self.asking[step][:] = refused
        self.give_up_sowings(day)

    def give_up_sowings(self, day):
        kept = []
        for request in self.asking[SOW]:
            if day - request[-2].batch.sow >= self.give_up:
                request[-1].succeed("given up")
            else:
                kept.append(request)
        self.asking[SOW][:] = kept

    def first_free(self, spaces):
        return next((space for space in spaces if self.held[space] < self.places[space]), None)

    def to_field(self, tray, day):
        return "field" if day >= tray.batch.wanted else None

    def to_table(self, tray, day):
        batch = tray.batch
        if day < batch.wanted - batch.nights - self.table_lead and self.first_free(batch.benches) is not None:
            return None
        return self.first_free(("table",))

    def to_bench(self, tray, day):
        return self.first_free(tray.batch.benches)

    def to_sow(self, tray, day):
        batch = tray.batch
        if not batch.bottom_heat:
            return self.first_free(batch.benches)
        place = self.first_free(("mat",))
        if place is None and day - batch.sow >= self.sow_wait:
            place = self.first_free(batch.benches)
        return place


class Batch:
    """A sowing; days of the calendar, heat in degree-days."""

    def __init__(self, id, trays, sow, wanted, bottom_heat, emerge_heat, growth, nights, benches):
        self.id, self.trays, self.sow, self.wanted, self.bottom_heat = id, trays, sow, wanted, bottom_heat
        self.emerge_heat, self.growth, self.nights, self.benches = emerge_heat, growth, nights, benches


class Tray:
    """One tray and its dates."""

    def __init__(self, batch, index):
        self.batch, self.index, self.space, self.entered = batch, index, None, 0
        self.moves = []

    def life(self, env, site):
        yield env.timeout(DAY * self.batch.sow)
        where = yield site.ask(SOW, self)
        if where == "given up":
            return
        self.note(env, where)
        emerged = env.now + self.batch.emerge_heat * (2 if where == "mat" else 3)
        if where == "mat":
            yield env.timeout(emerged - env.now)
            where = yield site.ask(BENCH, self)
            self.note(env, where)
        grown = emerged + DAY * self.batch.growth
        yield env.timeout(max(0, grown - env.now))
        yield site.ask(TABLE, self)
        self.note(env, "table")
        yield env.timeout(DAY * self.batch.nights)
        yield site.ask(OUT, self)
        self.note(env, "field")

    def note(self, env, where):
        self.moves.append((where, env.now // DAY))


def play(batches, places, **rules):
    """Plays a season; gives its trays, batch by batch."""
    env = simpy.Environment()
    site = Site(env, places, **rules)
    for batch in batches:
        while not site.is_work_day(batch.sow):
            batch.sow += 1
        while not site.is_work_day(batch.wanted):
            batch.wanted -= 1
    trays = [Tray(batch, index) for batch in batches for index in range(batch.trays)]
    for tray in trays:
        env.process(tray.life(env, site))
    env.process(site.clock())
    env.run()
    return trays


PLACES = {"mat": 34, "main": 75, "overflow": 50, "table": 34}
DAYS_OFF = (21, 25, 56)


def read():
    with open(os.path.join(os.path.dirname(os.path.abspath(__file__)), "rounds-batches.csv"), encoding="ascii", newline="") as file:
        return [
            Batch(
                row["batch"], int(row["trays"]), int(row["sow"]), int(row["wanted"]), row["bottom_heat"] == "yes",
                int(row["emerge_heat"]), int(row["growth_days"]), int(row["hardening_nights"]), row["benches"].split(),
            )
            for row in csv.DictReader(file)
        ]


def main():
    trays = play(read(), PLACES, days_off=DAYS_OFF, sow_wait=3, give_up=10, table_lead=2)
    sys.stdout.write("batch,tray,moves\n")
    for tray in trays:
        moves = " ".join(f"{where}:{day}" for where, day in tray.moves)
        sys.stdout.write(f"{tray.batch.id},{tray.index + 1},{moves or 'given up'}\n")


if __name__ == "__main__":
    main()
