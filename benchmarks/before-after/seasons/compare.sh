#!/usr/bin/env bash
# Plays the same random sites in this tree and in the tree of a tag, and says whether all that is kept of each season is the same:
# benchmarks/before-after/seasons/compare.sh [TAG [CASES]]
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
root=$(git -C "$here" rev-parse --show-toplevel)
tag=${1:-before-one-house} cases=${2:-200}
scratch=$(mktemp -d)
trap 'git -C "$root" worktree remove --force "$scratch/tree" 2> /dev/null; rm -rf "$scratch" "$here/obj" "$here/bin"' EXIT
git -C "$root" worktree add --detach "$scratch/tree" "$tag" > /dev/null
for side in "$scratch/tree:before" "$root:now"; do
    tree=${side%:*} name=${side#*:}
    dotnet build "$tree/src/BenchSim.Cli" -c Release -p:RunAnalyzers=false > "$scratch/$name.log"
    rm -rf "$here/obj" "$here/bin"
    dotnet build "$here" -c Release -p:Tree="$tree" -o "$scratch/$name" > "$scratch/$name.log"
    dotnet "$scratch/$name/BenchSim.Season.Tests.dll" "$cases" > "$scratch/$name.txt"
done
cmp "$scratch/before.txt" "$scratch/now.txt" && echo "$cases random sites: the same, $(wc -l < "$scratch/now.txt") lines"
