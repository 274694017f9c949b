"""Makes the numbers that both engines are fed. Run once; the files it wrote are kept, so nobody needs to run it again.

    /usr/bin/python3 make_numbers.py
"""

import random


def write(name, header, rows):
    with open(name, "w", encoding="ascii", newline="\n") as file:
        file.write(header + "\n")
        for row in rows:
            file.write(",".join(str(value) for value in row) + "\n")


def any_time():
    """400 single trays that come at random, one in two days; hours, exponential stays of mean 6, 16 and 4 days."""
    luck = random.Random(20270302)
    comes = 0.0
    rows = []
    for index in range(400):
        comes += luck.expovariate(0.5 / 24)
        rows.append([index, round(comes, 4)] + [round(luck.expovariate(1 / (24 * days)), 4) for days in (6, 16, 4)])
    write("any-time-numbers.csv", "tray,comes,mat,bench,table", rows)


def rounds():
    """60 batches over ten weeks: trays, sow day, degree-days to come up and days of growth; day 0 is a Monday."""
    luck = random.Random(20270303)
    rows = []
    for index in range(60):
        sow = luck.randint(0, 70)
        mat = luck.random() < 0.7
        rise = 10 * luck.randint(2, 9) + luck.randint(1, 9)
        growth = luck.randint(6, 24)
        nights = luck.randint(0, 5)
        wanted = sow + rise // 10 + growth + nights + luck.randint(0, 12)
        rows.append([f"b{index:02}", luck.randint(1, 14), sow, wanted, "yes" if mat else "no", rise, growth, nights, luck.choice(["main overflow", "overflow main", "main", "overflow"])])
    write("rounds-batches.csv", "batch,trays,sow,wanted,bottom_heat,emerge_heat,growth_days,hardening_nights,benches", rows)


if __name__ == "__main__":
    any_time()
    rounds()
