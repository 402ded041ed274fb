package liftwright.rig.text;

/** Finds the splices that take an entry out, with the comments it owns and no others. */
final class Removal {

    private final Layout layout;
    private final Lines lines;
    private final String text;

    Removal(Layout layout, String text) {
        this.layout = layout;
        this.lines = layout.lines();
        this.text = text;
    }

    Plan plan(Trail trail) {
        var up = trail.up();
        if (up.isEmpty()) {
            return new Plan.Refused("The whole file cannot be removed.");
        }
        Trail parent = up.get();
        int index = trail.index();
        int count =
                switch (parent.last()) {
                    case Node.Entries map -> map.entries().size();
                    case Node.Items list -> list.items().size();
                    case Node.Scalar _ -> 0;
                };
        if (layout.flow(parent.last())) {
            return fromFlow(parent.last(), index, count);
        }
        if (layout.inFlow(parent)) {
            return new Plan.Refused("It is half of a pair without braces: remove the pair.");
        }
        return fromBlock(parent, index, count);
    }

    private Plan fromBlock(Trail parent, int index, int count) {
        int from = from(parent.last(), index);
        int to = to(parent.last(), index);
        String empty = parent.last() instanceof Node.Entries ? "{}" : "[]";
        if (!layout.beginsLine(from)) {
            if (count == 1) {
                return Plan.of(new Splice(from, to, empty));
            }
            int next = from(parent.last(), index + 1);
            boolean bare = text.substring(to, next).isBlank();
            return Plan.of(new Splice(from, bare ? next : layout.lastOnLine(to), ""));
        }
        Splice taken = wholeLines(layout.ownedFrom(from), lines.indexOf(to));
        if (count > 1) {
            return Plan.of(taken);
        }
        int marker = marker(parent);
        return marker < 0
                ? new Plan.Refused("It is the last entry of the file.")
                : Plan.of(new Splice(marker, marker, " " + empty), taken);
    }

    private Splice wholeLines(int first, int last) {
        boolean unended = lines.next(last) == lines.end(last);
        int from = unended && first > 0 ? lines.end(first - 1) : lines.start(first);
        return new Splice(from, lines.next(last), "");
    }

    private Plan fromFlow(Node parent, int index, int count) {
        int from = from(parent, index);
        int to = to(parent, index);
        int comma = layout.skipBlanks(to);
        boolean separated = layout.at(comma) == ',';
        if (!separated && index < count - 1) {
            return new Plan.Refused("Its comma stands in another line: remove the entry by hand.");
        }
        int end = separated ? comma + 1 : to;
        if (layout.beginsLine(from) && layout.endsLine(end)) {
            return Plan.of(wholeLines(layout.ownedFrom(from), lines.indexOf(end)));
        }
        if (separated && index < count - 1) {
            return Plan.of(new Splice(from, layout.skipBlanks(end), ""));
        }
        if (index > 0) {
            int before = to(parent, index - 1);
            String between = text.substring(before, from);
            // A comma may end a flow collection, so a comment behind the last but one can stay.
            if (between.indexOf('\n') < 0 && between.indexOf('\r') < 0) {
                return Plan.of(new Splice(before, to, ""));
            }
        }
        return Plan.of(new Splice(from, end, ""));
    }

    private int from(Node parent, int index) {
        return switch (parent) {
            case Node.Entries map -> map.entries().get(index).keySpan().from();
            case Node.Items list when layout.flow(list) -> list.items().get(index).span().from();
            case Node.Items list -> layout.dash(list, index);
            case Node.Scalar scalar -> scalar.span().from();
        };
    }

    private int to(Node parent, int index) {
        return switch (parent) {
            case Node.Entries map -> layout.end(map.entries().get(index));
            case Node.Items list -> list.items().get(index).span().to();
            case Node.Scalar scalar -> scalar.span().to();
        };
    }

    /**
     * Offset behind the colon or dash that the trail's last node is the value of; −1 at the root.
     */
    int marker(Trail trail) {
        var up = trail.up();
        if (up.isEmpty()) {
            return -1;
        }
        return switch (up.get().last()) {
            case Node.Entries map -> layout.afterColon(map.entries().get(trail.index()));
            case Node.Items list -> layout.dash(list, trail.index()) + 1;
            case Node.Scalar _ -> -1;
        };
    }
}
