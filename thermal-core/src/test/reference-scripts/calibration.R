# SPDX-License-Identifier: Apache-2.0
# Second opinion on fits, by R (nls, gls, survreg, rlm): prints the figures that CalibrationReferenceTest expects.
# Usage: Rscript calibration.R > ../resources/org/beveragethermal/core/calibration/calibration-reference.txt (R 4.2.2)
options(digits = 10)
suppressMessages({ library(MASS); library(nlme); library(survival) })
# A log of our own invention: a bottle in a refrigerator, minutes and degrees Celsius.
t <- seq(0, 285, by = 15)
y <- c(22.1, 20.4, 18.9, 17.6, 16.3, 15.3, 14.2, 13.4, 12.5, 11.9, 11.1, 10.6, 10.0, 9.6, 9.0, 8.7, 8.3, 8.0, 7.6, 7.5)
out <- function(name, x) cat(name, formatC(as.numeric(x), digits = 10, format = "g"), "\n")

f <- deriv(~ room + d * exp(-r * t), c("room", "d", "r"), function(room, d, r, t) NULL)
fit <- nls(y ~ f(room, d, r, t), start = list(room = 4, d = 18, r = 0.008), control = nls.control(tol = 1e-8))
s <- summary(fit)
out("nls.coef", coef(fit)); out("nls.se", s$parameters[, 2]); out("nls.sigma", s$sigma)
out("nls.cor", cov2cor(vcov(fit))[1, 3])
out("nls.logLik", as.numeric(logLik(fit))); out("nls.AIC", AIC(fit)); out("nls.BIC", BIC(fit))
rough <- nls(y ~ room + d * exp(-r * t), start = list(room = 4, d = 18, r = 0.008)) # profiles want room to converge
ci <- confint(rough); out("nls.profile.room", ci["room", ]); out("nls.profile.r", ci["r", ])
kept <- nls(y ~ 4 + d * exp(-r * t), start = list(d = 18, r = 0.008))
a <- anova(kept, fit); out("nls.F", a$`F value`[2]); out("nls.F.p", a$`Pr(>F)`[2])
lin <- lm(log(y - 4) ~ t)
out("lm.cooks1", cooks.distance(lin)[1]); out("lm.hat1", hatvalues(lin)[1])
out("lm.predict", predict(lin, data.frame(t = 300), interval = "prediction", level = 0.95))
out("lm.confidence", predict(lin, data.frame(t = 300), interval = "confidence", level = 0.95))

# Errors that follow each other: a straight line with AR(1), maximum likelihood.
g <- gls(log(y - 4) ~ t, correlation = corAR1(form = ~1), method = "ML")
out("gls.coef", coef(g)); out("gls.phi", coef(g$modelStruct$corStruct, unconstrained = FALSE))
out("gls.se", sqrt(diag(g$varBeta))); out("gls.logLik", as.numeric(logLik(g)))

# Censored: readings below 9 only known to be below 9, scatter known to be 0.1, and scatter estimated.
limit <- 9
z <- pmax(y, limit); event <- as.integer(y >= limit)
x <- exp(-0.0078 * t)
known <- survreg(Surv(z, event, type = "left") ~ x, dist = "gaussian", scale = 0.1)
out("tobit.known.coef", coef(known)); out("tobit.known.se", sqrt(diag(vcov(known))))
free <- survreg(Surv(z, event, type = "left") ~ x, dist = "gaussian")
out("tobit.free.coef", coef(free)); out("tobit.free.scale", free$scale); out("tobit.free.logLik", free$loglik[2])

# Outliers: Huber and biweight with a known scale.
xr <- exp(-0.00676 * t); w <- y; w[5] <- w[5] + 3; w[12] <- w[12] - 2
h <- function(loss, derivative) {
  objective <- function(b) sum(loss((w - b[1] - b[2] * xr) / 0.1))
  optim(c(4, 18), objective, method = "BFGS", control = list(reltol = 1e-15, maxit = 1000))$par
}
k <- 1.345; huber <- function(r) ifelse(abs(r) < k, r^2 / 2, k * abs(r) - k^2 / 2)
c0 <- 4.685; bi <- function(r) ifelse(abs(r) < c0, c0^2 / 6 * (1 - (1 - (r / c0)^2)^3), c0^2 / 6)
out("huber.coef", h(huber)); out("biweight.coef", h(bi))
# Shapes of residuals
e <- residuals(lin)
n <- length(e)
p <- pnorm(sort(e), mean(e), sd(e))
A <- -n - mean((2 * seq_len(n) - 1) * (log(p) + log(1 - rev(p))))
out("ad.statistic", (1 + 0.75 / n + 2.25 / n^2) * A)
out("dw", sum(diff(e)^2) / sum(e^2))
