"""Times a season in BenchSim and in SimPy 3, in one run, and prints a table.

    apt-get install python3-simpy3
    dotnet build BenchSim.sln -c Release
    /usr/bin/python3 benchmarks/side-by-side/side_by_side.py

The shortest of many calls counts (40 in C#, 100 in SimPy), warm, since anything else on the machine only ever makes a call longer. The rounds must
agree to the tray before the times are worth comparing.
"""

import os
import subprocess
import sys
import tempfile

HERE = os.path.dirname(os.path.abspath(__file__))
ROOT = os.path.dirname(os.path.dirname(HERE))
SEASON, SIMPY = "BenchSim.Season", "SimPy 3"
MODELS = ("rounds", "spring")


def run(*command):
    return subprocess.run(command, check=True, stdout=subprocess.PIPE, text=True, cwd=ROOT).stdout


def dotnet(project, *arguments):
    return run("dotnet", "run", "--project", project, "-c", "Release", "--no-build", "--", *arguments)


def measure():
    with tempfile.TemporaryDirectory() as folder:
        with open(os.path.join(folder, "spring.json"), "w", encoding="utf-8") as file:
            file.write(dotnet("src/BenchSim.Cli", "check", "scenarios/two-house-spring", "--json"))
        lines = "".join(dotnet("benchmarks/BenchSim.Benchmarks", "side-by-side", model) for model in MODELS)
        lines += run(sys.executable, "-B", os.path.join(HERE, "simpy_models.py"), folder)
    found = {}
    for line in lines.splitlines():
        model, name, seconds, answer, *_ = line.split(",")
        found[model, name] = (float(seconds), float(answer))
    return found


def main():
    found = measure()
    if found["rounds", SEASON][1] != found["rounds", SIMPY][1]:
        sys.exit(f"The programs disagree on the rounds: {found}")
    for model in MODELS:
        ours, theirs = found[model, SEASON][0], found[model, SIMPY][0]
        print(f"{model:<8} {SEASON} {1000 * ours:.3f} ms, {SIMPY} {1000 * theirs:.3f} ms: {theirs / ours:.0f} times as fast")


if __name__ == "__main__":
    main()
