# SPDX-License-Identifier: GPL-3.0-or-later
"""The list of rules; a rule is a generator of findings with its statement as docstring."""
RULES = {}


def rule(name):
    def keep(function):
        assert name not in RULES, name
        RULES[name] = function
        return function

    return keep
