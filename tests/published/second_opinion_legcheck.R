#!/usr/bin/env Rscript
# SPDX-License-Identifier: GPL-3.0-or-later
# A second opinion on intraclass correlations and kappa from the package psych (Debian: r-cran-psych). Reads second_opinion/repeated_days.csv,
# which second_opinion_legcheck.py writes, and writes second_opinion/r_legcheck.csv, which the tests read. Run it in its own folder.
suppressPackageStartupMessages(library(psych))

digits <- function(x) sprintf("%.17g", x)
rows <- list()
note <- function(set, quantity, value) rows[[length(rows) + 1]] <<- data.frame(set = set, quantity = quantity, value = digits(value))

days <- read.csv("second_opinion/repeated_days.csv")
for (name in unique(days$set)) {
    here <- days[days$set == name, ]
    scores <- matrix(here$score, ncol = max(here$day), byrow = TRUE)
    # by plain analysis of variance, as the intervals are made
    said <- ICC(scores, lmer = FALSE)$results
    for (i in seq_len(nrow(said))) {
        type <- c("11", "21", "31", "1k", "2k", "3k")[i]
        note(name, paste("icc", type), said$ICC[i])
        note(name, paste("icc", type, "low"), said$`lower bound`[i])
        note(name, paste("icc", type, "high"), said$`upper bound`[i])
    }
}

tables <- list(sides = matrix(c(9, 3, 2, 12), 2), three = matrix(c(0, 4, 1, 0, 8, 0, 0, 1, 5), 3, byrow = TRUE), apart = matrix(c(2, 7, 8, 3), 2))
for (name in names(tables)) {
    said <- cohen.kappa(tables[[name]])
    note(name, "kappa", said$kappa)
    note(name, "u kappa", sqrt(said$var.kappa))
}
write.csv(do.call(rbind, rows), "second_opinion/r_legcheck.csv", row.names = FALSE, quote = FALSE)
