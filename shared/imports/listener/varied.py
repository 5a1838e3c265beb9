"""Marked transcripts told and heard otherwise, so that the listener learns from short and terse speech, other numbers and mistakes as well.

A row is what training.ts makes of one transcript; each function here makes another one of it.
"""
import random


def kept_of(row, keep):
    """A transcript with only some of its words; what was said at words that are gone is gone."""
    place, new = [0] * (len(keep) + 1), 0
    for at, stays in enumerate(keep):
        place[at] = new
        new += stays
    place[len(keep)] = new
    out = {key: [each for each, stays in zip(row[key], keep) if stays] for key in ("words", "classes", "pauses", "values", "begins")}
    out["figures"] = [dict(f, at=place[f["at"]]) for f in row["figures"] if keep[f["at"]]]
    out["names"] = [dict(n, **{"from": place[n["from"]], "to": place[min(n["to"], len(keep))]}) for n in row["names"] if keep[n["from"]] and keep[min(n["to"], len(keep)) - 1]]
    out["turns"] = [dict(t, at=place[t["at"]]) for t in row["turns"] if t["at"] < len(keep) and keep[t["at"]]]
    stays = [e["at"] < len(keep) and keep[e["at"]] for e in row["exercises"]]
    out["exercises"] = [dict(e, at=place[e["at"]]) for e, kept in zip(row["exercises"], stays) if kept]
    out["statements"] = [dict(s, at=place[s["at"]], owners=[o for o, kept in zip(s["owners"], stays) if kept]) for s in row["statements"] if keep[s["at"]]]
    return out


def next_of(row, at, end):
    """Where the speaker turns next."""
    return min((t["at"] for t in row["turns"] if t["at"] > at), default=end)


def excerpt(row):
    """Some exercises that follow one another, as of a short clip."""
    turns = sorted(e["at"] for e in row["exercises"])
    if len(turns) < 2:
        return row
    first = random.randrange(len(turns))
    last = min(len(turns), first + random.randint(1, 4))
    start = 0 if first == 0 and random.random() < 0.5 else max(0, turns[first] - random.choice([0, 0, 5, 20]))
    end = len(row["words"]) if last == len(turns) and random.random() < 0.5 else next_of(row, turns[last - 1], len(row["words"]))
    return kept_of(row, [start <= at < end for at in range(len(row["words"]))])


def terse(row):
    """Without most of the sentences in which nothing is turned to, named or counted."""
    count = len(row["words"])
    told = [False] * count
    for turn in row["turns"]:
        for at in range(max(0, turn["at"] - 3), min(count, turn["at"] + 5)):
            told[at] = True
    for figure in row["figures"]:
        if figure["role"] != 0:
            told[figure["at"]] = True
    for name in row["names"]:
        if name["starts"]:
            told[name["from"]] = True
    share, keep, at = random.uniform(0.4, 1), [True] * count, 0
    while at < count:
        end = next((after for after in range(at + 1, count) if row["begins"][after]), count)
        if not any(told[at:end]) and random.random() < share:
            keep[at:end] = [False] * (end - at)
        at = end
    return kept_of(row, keep) if any(keep) else row


# What a number is taken for, the likelier ones more often.
MISHEARD = [("repsMin", '{"repsMin":%s,"repsMax":%s}')] * 4 + [("load", '{"load":{"value":%s,"unit":"kg"}}')] * 3 + [("sets", '{"sets":%s}')] * 2 + [("restSeconds", '{"restSeconds":%s}'), ("seconds", '{"seconds":%s}')]


def misheard(row):
    """Some figures and exercises are missed and some numbers are taken for figures, as a reader does; nobody owns these."""
    stays = [random.random() >= 0.06 for _ in row["exercises"]]
    statements = [dict(s, owners=[o for o, kept in zip(s["owners"], stays) if kept]) for s in row["statements"] if random.random() >= 0.04]
    for figure in row["figures"]:
        value = row["values"][figure["at"]]
        if figure["role"] == 0 and value is not None and random.random() < 0.06:
            kind, says = random.choice(MISHEARD)
            statements.append(dict(at=figure["at"], kind=kind, value=says.replace("%s", f"{value:g}"), owners=[0] * sum(stays)))
    return dict(row, exercises=[e for e, kept in zip(row["exercises"], stays) if kept], statements=sorted(statements, key=lambda s: s["at"]))


# The numbers of one word.
SAID = dict(enumerate("two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty".split(), 2))
SAID.update(zip(range(30, 91, 10), "thirty forty fifty sixty seventy eighty ninety".split()))
# How many more or fewer are counted of everything, and how numbers are written; most are left as they are.
MORE, WRITTEN = [-2, -1, 0, 0, 1, 2, 3], ["as said"] * 3 + ["in words", "in digits"]


def recounted(row):
    """With other numbers where six to twenty are counted, all by as many, and now and then in digits for words or in words for digits. Numbers of several words stay."""
    more, written = random.choice(MORE), random.choice(WRITTEN)
    counts = [value is not None and kind == "NUM" for value, kind in zip(row["values"], row["classes"])]
    words, values = list(row["words"]), list(row["values"])
    for at, (word, value) in enumerate(zip(row["words"], row["values"])):
        if not counts[at] or any(counts[max(0, at - 1):at] + counts[at + 1:at + 2]) or word not in (SAID.get(value), f"{value:g}") or value != int(value) or not 2 <= value <= 90:
            continue
        new = int(value) + (more if 6 <= value <= 20 else 0)
        inWords = written == "in words" or (written == "as said" and word == SAID.get(value))
        words[at], values[at] = SAID.get(new, str(new)) if inWords else str(new), new
    return dict(row, words=words, values=values)


def varied(row):
    """The same transcript as it might have been told and heard as well."""
    if random.random() < 0.5:
        row = recounted(row)
    if random.random() < 0.3:
        row = excerpt(row)
    if random.random() < 0.25:
        row = terse(row)
    return misheard(row) if random.random() < 0.6 else row
