# Simple kriging of a flat sheet by gstat: the same curve, mean and error of reading as the field beside it.
# usage: Rscript field-gstat.R < problem
# First line: mean, sill, length of the curve, variance of a reading, readings, places. Then a line for each reading: x, y, value; for each place: x, y.
# Prints the seconds of processor time and, for each place, value and variance.
suppressMessages({ library(sp); library(gstat) })
input <- file("stdin", "r")
head <- scan(text = readLines(input, 1), quiet = TRUE)
rest <- matrix(scan(input, quiet = TRUE), ncol = 3, byrow = TRUE)
n <- head[5]
readings <- data.frame(x = rest[1:n, 1], y = rest[1:n, 2], z = rest[1:n, 3])
places <- data.frame(x = rest[-(1:n), 1], y = rest[-(1:n), 2])
coordinates(readings) <- ~ x + y
coordinates(places) <- ~ x + y
curve <- vgm(head[4], "Err", 0, add.to = vgm(head[2], "Mat", head[3], kappa = 2))
took <- system.time(map <- krige(z ~ 1, readings, places, curve, beta = head[1], debug.level = 0))
cat(sprintf("%.6f\n", took[["user.self"]] + took[["sys.self"]]))
cat(sprintf("%.12g %.12g\n", map$var1.pred, map$var1.var), sep = "")
