#!/usr/bin/env Rscript
# SPDX-License-Identifier: GPL-3.0-or-later
# A second opinion on fits and quantiles from R's own lm() and qt(); base R is enough (Debian: r-base-core).
# Writes second_opinion/r_*.csv, which the tests read. Run it in its own folder.

digits <- function(x) sprintf("%.17g", x)
rows <- list()
note <- function(set, quantity, value) rows[[length(rows) + 1]] <<- data.frame(set = set, quantity = quantity, value = digits(value))

record <- function(set, fit) {
    table <- summary(fit)$coefficients
    for (i in seq_len(nrow(table))) {
        note(set, paste("coefficient", i - 1), table[i, "Estimate"])
        note(set, paste("standard error", i - 1), table[i, "Std. Error"])
    }
    note(set, "residual sd", summary(fit)$sigma)
}

data <- function(name) read.csv(file.path("data", name), comment.char = "#")
pontius <- data("nist_pontius.csv")
record("pontius", lm(y ~ x + I(x^2), pontius))
record("noint1", lm(y ~ x + 0, data("nist_noint1.csv")))

thermometer <- data("jcgm100_h3.csv")
names(thermometer) <- c("t", "b")
thermometer$x <- thermometer$t - 20
line <- lm(b ~ x, thermometer)
record("thermometer", line)
for (t in c(20, 24, 30)) {
    at <- predict(line, data.frame(x = t - 20), se.fit = TRUE)
    note("thermometer", paste("value at", t), at$fit)
    note("thermometer", paste("u at", t), at$se.fit)
}

band <- data.frame(l = c(1.15, 1.245, 1.37, 1.525, 1.72, 1.95), f = 9.80665 * seq(5, 17.5, 2.5))
models <- list(line = f ~ I(l - 1) + 0, quadratic = f ~ I(l - 1) + I((l - 1)^2) + 0, rubber = f ~ I(l - l^-2) + I(1 - l^-3) + 0)
for (name in names(models)) {
    fit <- lm(models[[name]], band)
    record(name, fit)
    n <- nrow(band)
    k <- length(coef(fit)) + 1
    # without the constant n(1 + log 2 pi), which all models of the same points share
    note(name, "aicc", n * log(sum(resid(fit)^2) / n) + 2 * k + 2 * k * (k + 1) / (n - k - 1))
    for (l in c(1.1, 1.4, 1.9)) {
        at <- predict(fit, data.frame(l = l), se.fit = TRUE)
        note(name, paste("pull", l), at$fit)
        note(name, paste("u", l), at$se.fit)
    }
}
write.csv(do.call(rbind, rows), "second_opinion/r_fits.csv", row.names = FALSE, quote = FALSE)

freedom <- c(0.3, 0.5, 1, 1.3, 2, 2.78, 3, 4, 5, 6.5, 8, 10, 13.7, 20, 30, 60.2, 120, 1000, 1e6, 1e12)
write.csv(data.frame(degrees_of_freedom = digits(freedom), k95 = digits(qt(0.975, freedom))), "second_opinion/r_student.csv", row.names = FALSE, quote = FALSE)
