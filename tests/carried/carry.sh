# SPDX-License-Identifier: GPL-3.0-or-later
# Sourced by ./check and by its own test: one vault between two machines and back, each reading the other's to the same digest and
# writing on in it.

same() {
    if [ "$1" != "$2" ]; then
        echo "$3: $1 on one, $2 on the other" >&2
        return 1
    fi
    echo "$3: $1"
}

other() {
    if [ "$1" = "$2" ]; then
        echo "$3: nothing has changed, $1" >&2
        return 1
    fi
}

# carry FIRST SECOND: the names of two lists, each how that machine calls steelyard_carried with its folder and the club's files.
carry() {
    local -n first=$1 second=$2
    local made added again
    "${first[@]}" make || return 1
    made=$("${first[@]}" digest) || return 1
    same "$made" "$("${second[@]}" digest)" "made by the first" || return 1
    added=$("${second[@]}" add "Far gym") || return 1
    other "$made" "$added" "kept by the second" || return 1
    same "$added" "$("${first[@]}" digest)" "kept by the second" || return 1
    again=$("${first[@]}" add "Near gym") || return 1
    other "$added" "$again" "kept by the first" || return 1
    same "$again" "$("${second[@]}" digest)" "kept by the first"
}
