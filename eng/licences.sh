#!/usr/bin/env bash
# Prints the licences of all that is inside a build: bash eng/licences.sh DEPS.json, the file benchsim.deps.json of that build.
# Fails where a part has no licence, or one whose text does not lie in eng/licences.
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
deps=$1
packages=$(dotnet nuget locals global-packages --list | sed 's/^global-packages: //')
used="" code=0 texts=$(mktemp)
trap 'rm -f "$texts"' EXIT

tag() { tr -d '\r\n' < "$2" | grep -o "<$1[^>]*>[^<]*" | head -n 1 | sed 's/^<[^>]*>//'; }

part() {
    printf '%s\n    licence: %s\n    %s\n    %s\n' "$1" "$2" "$3" "$4"
    used+=" $(sed 's/ OR .*//' <<< "$2")"
    # Where one may choose, the text of either stands here.
    [[ $2 != *" OR Apache-2.0" ]] || used+=" Apache-2.0"
}

echo "BenchSim"
echo
cat "$here/../LICENSE"
echo
echo "What is inside, whose it is, and under which licence. The texts follow below."
echo
# "Name/1.2.3": { with "type": "package" or "runtimepack" in the next line.
while IFS=/ read -r name version; do
    name=${name#runtimepack.}
    folder=$packages/${name,,}/$version
    spec=$folder/${name,,}.nuspec
    licence=$(tag 'license type="expression"' "$spec" || true)
    [ -n "$licence" ] || { echo "$name $version has no licence expression." >&2; code=1; }
    part "$name $version" "$licence" "$(tag copyright "$spec" || tag authors "$spec")" "$(tag projectUrl "$spec" || true)"
    for text in "$folder"/LICENSE* "$folder"/THIRD-PARTY-NOTICES*; do
        [ ! -e "$text" ] || printf '\n==== %s %s: %s\n\n%s\n' "$name" "$version" "$(basename "$text")" "$(tr -d '\r' < "$text")" >> "$texts"
    done
done < <(grep -B 1 -E '"type": "(package|runtimepack)"' "$deps" | grep -oE '"[A-Za-z0-9._-]+/[^"]+"' | tr -d '"' | sort -u)
while IFS='|' read -r name licence whose from; do
    [[ -z $name || $name == \#* ]] || part "$name" "$licence" "$whose" "$from"
done < "$here/licences/inside.txt"
for licence in $(tr ' ' '\n' <<< "$used" | sort -u); do
    [ "$licence" != MS-PL ] || continue
    text=$here/licences/$licence.txt
    [ -e "$text" ] || { echo "The text of $licence is not in eng/licences." >&2; code=1; continue; }
    printf '\n==== %s\n\n%s\n' "$licence" "$(cat "$text")"
done
for text in src/BenchSim.Report/Fonts/LICENSE.txt src/BenchSim.Workbench/wwwroot/vendor/preact.LICENSE.txt \
    src/BenchSim.Workbench/wwwroot/vendor/htm.LICENSE.txt src/BenchSim.Study/Trust/joe-kuo-d6.LICENSE.txt; do
    printf '\n==== %s\n\n%s\n' "$text" "$(cat "$here/../$text")"
done
cat "$texts"
exit "$code"
