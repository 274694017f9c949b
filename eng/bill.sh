#!/usr/bin/env bash
# Adds to a bill of materials what the licences of the archives name and it does not: .NET itself, the parts that lie inside packages, and
# the files of others on the page. bash eng/bill.sh BILL.json LICENCES.txt...
set -euo pipefail
bill=$1
shift
parts=$(mktemp)
trap 'rm -f "$parts"' EXIT
for licences in "$@"; do
    # A part has four lines: name and version, licence, whose, from where.
    awk '
        /^What is inside/ { inside = 1 }
        /^====/ { exit }
        inside && /^    licence: / { licence = substr($0, 14); getline whose; getline from; print name "|" licence "|" whose "|" from }
        { name = $0 }' "$licences"
done | sort -u | awk -F '|' -v bill="$bill" '
    function text(words) { gsub(/^ +/, "", words); gsub(/\\/, "\\\\", words); gsub(/"/, "\\\"", words); return "\"" words "\"" }
    BEGIN {
        while ((getline line < bill) > 0)
            if (match(line, /"purl": "pkg:nuget\/[^"]+"/)) known[substr(line, RSTART + 19, RLENGTH - 20)] = 1
    }
    {
        name = $1; version = ""
        if (match(name, / [0-9][0-9.]*$/)) { version = substr(name, RSTART + 1); name = substr(name, 1, RSTART - 1) }
        if ((name "@" version) in known) next
        printf "    {\n      \"type\": \"library\",\n      \"name\": %s,\n", text(name)
        if (version != "") printf "      \"version\": %s,\n      \"purl\": %s,\n", text(version), text("pkg:nuget/" name "@" version)
        printf "      \"licenses\": [{ \"expression\": %s }],\n      \"copyright\": %s,\n", text($2), text($3)
        printf "      \"externalReferences\": [{ \"url\": %s, \"type\": \"website\" }]\n    },\n", text($4)
    }' > "$parts"
sed -i "/^  \"components\": \\[/r $parts" "$bill"
