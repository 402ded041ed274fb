package liftwright.trials.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Section.Card.Style;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.rig.Fan;
import liftwright.rig.Pack;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.trials.CardId;
import liftwright.trials.CardKind;
import liftwright.trials.Planned;
import liftwright.trials.Run;
import liftwright.trials.programme.Missing;
import liftwright.trials.programme.Programme;

/** Which build the card is of, what changed, and what has to be there before it. */
final class Configuration {

    private Configuration() {}

    static List<Block> blocks(CardFacts facts) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(build(facts));
        blocks.add(serials(facts));
        blocks.add(changed(facts));
        blocks.add(before(facts.planned()));
        List<Missing> missing = Missing.of(facts.rig(), facts.planned());
        if (!missing.isEmpty()) {
            blocks.add(
                    CardText.lines(
                            "Not to be done before this is declared",
                            Style.PLAIN,
                            missing.stream().map(one -> one.at() + ": " + one.words()).toList()));
        }
        return blocks;
    }

    private static Block build(CardFacts facts) {
        Rig rig = facts.rig();
        List<Sentence> lines = new ArrayList<>();
        lines.add(Sentence.words("Rig " + rig.name() + ", revision " + rig.revision()));
        lines.add(Sentence.words("Digest of its file: " + facts.rigDigest()));
        lines.add(
                Sentence.words(
                        facts.settingsHash()
                                .map(hash -> "Settings of controllers and computer, hash: " + hash)
                                .orElse(
                                        "Settings of controllers and computer: no hash is known;"
                                                + " read them out, save them, and write their hash on"
                                                + " the pass")));
        lines.add(Sentence.words(fans(rig, facts.planned())));
        if (facts.planned().run().isPresent()) {
            lines.add(Sentence.words(mass(rig, facts.planned())));
        }
        return new Block.Lines("Configuration", Style.PLAIN, lines);
    }

    private static String mass(Rig rig, Planned planned) {
        Run run = planned.run().orElseThrow();
        boolean dummy = planned.id().subject().equals(Programme.DUMMY);
        if (run.worn()) {
            return "Somebody is in the rig.";
        }
        if (dummy || (rig.wearer().isPresent() && run.held() == Run.Held.SCALE)) {
            return "Nobody is in the rig: dead mass as heavy as the wearer hangs in the harness, and"
                    + " dead arms hold the mounts as the wearer would.";
        }
        return "Nobody is in the rig.";
    }

    private static String fans(Rig rig, Planned planned) {
        Optional<Run> run = planned.run();
        if (run.isEmpty()) {
            return planned.killProof()
                    ? "One fan of the type turns, on a bench, off the rig."
                    : "No fan turns: packs are out, or their plugs are.";
        }
        List<String> ids = run.get().fans().stream().map(PartId::text).toList();
        String which =
                ids.size() == rig.fans().size() && ids.size() > 1
                        ? "all " + ids.size() + " fans"
                        : String.join(", ", ids);
        return "Fans that run: "
                + which
                + (ids.size() == rig.fans().size() ? "." : ". All others are unplugged.");
    }

    /** As declared; a line to write on where the file has none. */
    private static Block serials(CardFacts facts) {
        Rig rig = facts.rig();
        Set<PartId> running =
                facts.planned()
                        .run()
                        .map(run -> Set.copyOf(run.fans()))
                        .orElse(
                                rig.fans().stream()
                                        .filter(fan -> isOf(fan, facts.planned().id()))
                                        .map(Fan::id)
                                        .collect(Collectors.toSet()));
        TreeMap<String, String> known = new TreeMap<>();
        List<String> unknown = new ArrayList<>();
        for (Fan fan : rig.fans()) {
            if (running.contains(fan.id())) {
                fan.serial()
                        .ifPresentOrElse(
                                serial -> known.put(fan.id().text(), serial),
                                () -> unknown.add(fan.id().text()));
            }
        }
        boolean packs = facts.planned().run().isPresent() || isCells(facts.planned().id());
        for (Pack pack : packs ? rig.packs() : List.<Pack>of()) {
            if (!isCells(facts.planned().id())
                    || pack.cell().name().equals(facts.planned().id().subject())) {
                pack.serial()
                        .ifPresentOrElse(
                                serial -> known.put(pack.id().text(), serial),
                                () -> unknown.add(pack.id().text()));
            }
        }
        List<String> lines = new ArrayList<>();
        known.forEach((id, serial) -> lines.add(id + ": " + serial));
        if (!unknown.isEmpty()) {
            lines.add("No serial in the file, so write it here: " + String.join(", ", unknown));
        }
        if (lines.isEmpty()) {
            lines.add("Serial numbers of what is measured");
        }
        return CardText.lines("Serial numbers", Style.WRITE, lines);
    }

    private static boolean isCells(CardId id) {
        return id.kind() == CardKind.CELLS;
    }

    private static boolean isOf(Fan fan, CardId id) {
        return fan.type().name().equals(id.subject());
    }

    private static Block changed(CardFacts facts) {
        CardId id = facts.planned().id();
        String title = "Changed since this card last passed";
        if (facts.passedOn().isEmpty()) {
            return CardText.lines(
                    title, Style.PLAIN, List.of("It has not passed on this build yet."));
        }
        if (facts.changed().isEmpty()) {
            return CardText.lines(
                    title,
                    Style.PLAIN,
                    List.of(
                            "Passed on "
                                    + facts.passedOn().get()
                                    + "; nothing that it rests on is declared otherwise since."));
        }
        return CardText.rows(
                id,
                "changed",
                title + " on " + facts.passedOn().get(),
                List.of("input", "card-was", "card-is"),
                facts.changed().stream()
                        .map(
                                one ->
                                        List.of(
                                                Value.words("input", one.input()),
                                                Value.words("card-was", orNone(one.was())),
                                                Value.words("card-is", orNone(one.is()))))
                        .toList());
    }

    private static String orNone(String text) {
        return text.isEmpty() ? "not declared" : text;
    }

    private static Block before(Planned planned) {
        List<String> lines = new ArrayList<>();
        if (planned.killProof()) {
            lines.add("The kills were proved today, each path by itself.");
        }
        for (Set<CardId> group : planned.needs()) {
            lines.add(
                    "Passed on this build: "
                            + String.join(
                                    " or ", group.stream().sorted().map(CardId::text).toList()));
        }
        if (!planned.questions().isEmpty()) {
            lines.add(
                    "Nothing stops and nothing is undecided in the answers on: "
                            + String.join(", ", planned.questions().stream().sorted().toList()));
        }
        if (lines.isEmpty()) {
            lines.add("Nothing has to be passed before it.");
        }
        lines.add("Nothing was changed on the rig since the file was last saved.");
        return CardText.lines("Before this card", Style.TICK, lines);
    }
}
