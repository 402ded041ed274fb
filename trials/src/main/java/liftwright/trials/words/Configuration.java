package liftwright.trials.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Section.Card.Style;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
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

    private static final String SERIALS = "Serial numbers";

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
            lines.add(Sentence.words(mass(facts.planned())));
        }
        return new Block.Lines("Configuration", Style.PLAIN, lines);
    }

    private static String mass(Planned planned) {
        Run run = planned.run().orElseThrow();
        if (run.worn()) {
            return "Somebody is in the rig.";
        }
        if (planned.id().subject().equals(Programme.DUMMY)) {
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
        List<PartId> ids = run.get().fans();
        String which =
                ids.size() == rig.fans().size() && ids.size() > 1
                        ? "all " + ids.size() + " fans"
                        : PartList.words(ids);
        return "Fans that run: "
                + which
                + (ids.size() == rig.fans().size() ? "." : ". All others are unplugged.");
    }

    /** As declared, or where to write them; nothing is known of what the file does not say. */
    private static Block serials(CardFacts facts) {
        CardId id = facts.planned().id();
        Map<PartId, Optional<String>> parts = new LinkedHashMap<>();
        if (facts.planned().run().isPresent() || facts.planned().killProof()) {
            Near.running(facts.rig(), facts.planned())
                    .forEach(fan -> parts.put(fan.id(), fan.serial()));
        }
        for (Pack pack : facts.rig().packs()) {
            if (facts.planned().run().isPresent()
                    ? isNamed(facts.planned(), pack.id())
                    : isCells(id) && pack.cell().name().equals(id.subject())) {
                parts.put(pack.id(), pack.serial());
            }
        }
        List<String> lines = new ArrayList<>();
        List<PartId> unknown = new ArrayList<>();
        parts.forEach(
                (part, serial) ->
                        serial.ifPresentOrElse(
                                known -> lines.add(part + ": " + known), () -> unknown.add(part)));
        if (!unknown.isEmpty()) {
            lines.add(
                    "Not in the file, so that a swapped part is not noticed; write them here, or"
                            + " better declare them: "
                            + PartList.words(unknown));
        }
        return lines.isEmpty()
                ? CardText.lines(SERIALS, Style.WRITE, List.of("Of what is measured"))
                : CardText.lines(SERIALS, unknown.isEmpty() ? Style.TICK : Style.WRITE, lines);
    }

    /** Whether the pass rests on a part. */
    private static boolean isNamed(Planned planned, PartId part) {
        return planned.basis().parts().map(parts -> parts.contains(part.text())).orElse(true);
    }

    private static boolean isCells(CardId id) {
        return id.kind() == CardKind.CELLS;
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
