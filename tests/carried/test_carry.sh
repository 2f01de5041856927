#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# A vault carried between two machines that are both this one; and a carrier that loses something has to be noticed.
#   test_carry.sh PROGRAM FOLDER CLUB
set -uo pipefail
source "$(dirname "$0")/carry.sh"
program=$1 folder=$2 club=$3
rm -rf "$folder"
mkdir -p "$folder"

one=("$program" "$folder/alike" "$club") two=("$program" "$folder/alike" "$club")
carry one two || exit 1

apart=("$program" "$folder/other" "$club")
"${apart[@]}" make || exit 1
"${apart[@]}" add "Somewhere else" >/dev/null || exit 1
one=("$program" "$folder/again" "$club")
if carry one apart 2>/dev/null >&2; then
    echo "two vaults were taken for one" >&2
    exit 1
fi
