"""One whole weighing, worked out a second time and step by step; standard library only.

    python3 reference/crosscheck/weighing_case.py > reference/crosscheck/weighing_case.csv

Shares no code with the product and goes another way: forward through every way in which a year can go, instead of backwards; and
it finds out when a found fault is worth its remedy by trying every span of steps. The figures are invented; they are the inputs of
the test that compares (WeighingCrossCheckTest).

The unit: six years old, in rental, read on 10 June 2021. Its history leaves three states: nothing wrong (0.3), a weak run capacitor
(0.5; severity 0.8, growing 0.6 a season), a dirty condenser (0.2; severity 0.5, growing 0.6 a season).
"""
import csv
import math
import sys
from datetime import date, timedelta
from itertools import combinations_with_replacement

# ---- inputs -------------------------------------------------------------------------------------------------------------------
START, AGE, KILOWATTS = date(2021, 6, 10), 6.0, 1.450
RATE, CALL, PREMIUM, NIGHTS, NIGHT, KWH, USE = 150, 90, 600, 6, 90, 0.16, 0.6
NEW, COIL_HOURS, CAP_PART, CAP_HOURS = 1900, 1.5, 40, 0.5
DISCOUNT, YEARS, LIFE_USED, LOOKS = 0.05, 1, 0.6, 4
HOURS_A_DAY = [0, 0, 0, 2, 4, 7, 9, 9, 6, 2, 0, 0]          # April to October
SEASON = 1194.0                                               # run-hours of one season
FINDS, SILENT, LONGEST, MOST = 0.5, 0.15, 1.25, 1.6           # a look finds; ends without a sign; longer running; largest severity
STATES = [("none", 0.3, 0, 0), ("capacitor", 0.5, 0.8, 0.6), ("condenser", 0.2, 0.5, 0.6)]
LN = {"none": (0, 0), "capacitor": (-0.03, 0.16), "condenser": (-0.12, 0.15)}      # ln capacity and ln amps at severity 1
HAZARD = {"none": 0, "capacitor": 0.5, "condenser": 0.08}     # a season of running, at severity 1, with its square
CURES = {"capacitor": 0.95, "condenser": 0.92}
PRICE = {"capacitor": CALL + CAP_HOURS * RATE + CAP_PART, "condenser": CALL + COIL_HOURS * RATE}
# life: one in ten gone at 5 years, nine in ten at 15, all of it times three quarters
SHAPE = math.log(math.log(0.1) / math.log(0.9)) / math.log(15 / 5)
SCALE = 0.75 * 15 / (-math.log(0.1)) ** (1 / SHAPE)

OUT = csv.writer(sys.stdout, lineterminator="\n")


OUT.writerow(["what", "step", "value"])


def say(what, step, value):
    OUT.writerow([what, step, "%.9g" % value])


# ---- step 1: the calendar, thirty days at a time ------------------------------------------------------------------------------
STEPS = int(YEARS * 365.25 / 30 + 0.5)
hours = []
for k in range(STEPS):
    days = [START + timedelta(30 * k + i) for i in range(30)]
    hours.append(sum(HOURS_A_DAY[d.month - 1] for d in days))
seasons = [h / SEASON for h in hours]
elapsed = [sum(seasons[:k]) for k in range(STEPS + 1)]
whole, half = (1 + DISCOUNT) ** (-30 / 365.25), (1 + DISCOUNT) ** (-15 / 365.25)


# ---- step 2: what a severity does ---------------------------------------------------------------------------------------------
def ratio(ln, s):
    """The tables have points at every quarter of severity, straight between them, held from 1.5 on."""
    s = min(s, 1.5)
    i = min(int(s / 0.25), 5)
    a, b = math.exp(ln * 0.25 * i), math.exp(ln * 0.25 * (i + 1))
    return a + (b - a) * (s - 0.25 * i) / 0.25


def severity(s, r, t):
    return min(MOST, s + r * t)


def energy(k, kind, s, r):
    mid = severity(s, r, (elapsed[k] + elapsed[k + 1]) / 2)
    cap, amp = LN[kind]
    return half * KILOWATTS * hours[k] * USE * KWH * ratio(amp, mid) * min(LONGEST, 1 / ratio(cap, mid))


# ---- step 3: life and worth ---------------------------------------------------------------------------------------------------
def ageing(years):
    return (years / SCALE) ** SHAPE


def left(age):
    return SCALE * (ageing(age) + math.log(2)) ** (1 / SHAPE) - age


def annuity(n):
    return (1 - (1 + DISCOUNT) ** -n) / DISCOUNT


def worth(age, kind="none", s=0):
    sound = LIFE_USED * NEW * annuity(left(age)) / annuity(left(0))
    return sound if kind == "none" else max(0, sound - min(1, s) * PRICE[kind])


def fresh(k):
    """A new unit put in at step k: its energy until the end, its worth then taken off; it does not quit."""
    total, w = 0, 1
    for j in range(k, STEPS):
        total += w * energy(j, "none", 0, 0)
        w *= whole
    return total - w * worth(elapsed[STEPS] - elapsed[k])


# ---- step 4: chances of quitting, of the fault and of age ------------------------------------------------------------------------
def chances(k, kind, s, r, age):
    a, b = severity(s, r, elapsed[k]), severity(s, r, elapsed[k + 1])
    fault = HAZARD[kind] * seasons[k] * (a * a + a * b + b * b) / 3
    old = SILENT * (ageing(age + elapsed[k + 1]) - ageing(age + elapsed[k]))
    both = 1 - math.exp(-(fault + old)) if fault + old >= 1e-5 else fault + old
    return (both * fault / (fault + old) if fault else 0), (both * old / (fault + old) if old else 0)


EMERGENCY = PREMIUM + NIGHTS * NIGHT


# ---- step 5: every way in which the year can go, forwards -----------------------------------------------------------------------
def course(kind, s, r, age, start, sound, first, last):
    """(mean, mean square, by purpose, chance of quitting) from a step on; a fault found in steps first to last is remedied."""
    ways, alive, paid, w, quit = [], 1.0, 0.0, 1.0, 0.0
    for k in range(start, STEPS):
        run = w * energy(k, kind, s, r)
        of_fault, of_age = chances(k, kind, s, r, age)
        now = paid + run
        if of_age:
            ways.append((alive * of_age, now, w * half * (EMERGENCY + NEW), 0, w * whole * fresh(k + 1)))
        if of_fault:
            ways.append((alive * of_fault, now, w * half * (EMERGENCY + PRICE[kind]), 0, w * whole * sound[k + 1]))
        quit += alive * (of_fault + of_age)
        stays = alive * (1 - of_fault - of_age)
        looks = FINDS * LOOKS * seasons[k]
        found = (1 - math.exp(-looks) if looks >= 1e-5 else looks) if kind != "none" and first <= k < last else 0
        if found:
            ways.append((stays * found, now, 0, w * whole * PRICE[kind], w * whole * sound[k + 1]))
        alive, paid, w = stays * (1 - found), now, w * whole
    end = age + elapsed[STEPS]
    ways.append((alive, paid, 0, 0, -w * worth(end, kind, severity(s, r, elapsed[STEPS]))))
    mean = sum(p * (e + b + l + a) for p, e, b, l, a in ways)
    square = sum(p * (e + b + l + a) ** 2 for p, e, b, l, a in ways)
    return mean, square, [sum(way[0] * way[i] for way in ways) for i in (1, 2, 3, 4)], quit


def best(kind, s, r, sound):
    """The cheapest of all spans of steps in which a found fault is remedied."""
    tried = [course(kind, s, r, AGE, 0, sound, a, b) for a, b in combinations_with_replacement(range(STEPS + 1), 2)]
    return min(tried, key=lambda c: c[0])


def sound_from(k):
    return course("none", 0, 0, AGE, k, None, 0, 0)[0]


sound = [sound_from(k) for k in range(STEPS + 1)]
healthy = course("none", 0, 0, AGE, 0, None, 0, 0)
brand_new = course("none", 0, 0, 0, 0, None, 0, 0)
kept = {"none": healthy}
cured = {"none": healthy, "capacitor": healthy}
for kind, _, s, r in STATES[1:]:
    kept[kind] = best(kind, s, r, sound)
cured["condenser"] = best("condenser", 0, 0.6, sound)     # dirt comes back at its own rate

for k in range(STEPS):
    say("seasons of running", k, seasons[k])
say("worth of the sound machine today", "", worth(AGE))
for kind in kept:
    say("left alone: " + kind, "", kept[kind][0])
    say("cured: " + kind, "", cured[kind][0])
    say("quits within the year: " + kind, "", kept[kind][3])
say("new unit", "", brand_new[0])

# ---- step 6: the options --------------------------------------------------------------------------------------------------------
OPTIONS = {"keep": (0, {}), "clean": (PRICE["condenser"], {"condenser": CURES["condenser"]}),
           "repair": (PRICE["capacitor"], {"capacitor": CURES["capacitor"]}), "replace": (NEW, None)}
for option, (price, cures) in OPTIONS.items():
    mean = square = 0.0
    parts = [0.0] * 4
    for kind, weight, _, _ in STATES:
        chance = cures.get(kind, 0) if cures is not None else 1
        good = brand_new if cures is None else cured[kind]
        for p, c in ((weight * chance, good), (weight * (1 - chance), kept[kind])):
            mean += p * (price + c[0])
            square += p * (price * price + 2 * price * c[0] + c[1])
            parts = [x + p * y for x, y in zip(parts, c[2])]
    parts[3] += worth(AGE)
    for name, value in zip(("energy", "breakdown", "later work", "afterwards"), parts):
        say(option + ": " + name, "", value)
    say(option + ": now", "", price)
    say(option + ": expected", "", mean + worth(AGE))
    say(option + ": spread", "", math.sqrt(square - mean * mean))
