package liftwright.review;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.plant.HeldCorrections;
import liftwright.plant.HeldCorrections.Voided;
import liftwright.plant.Plant;
import liftwright.quantity.Quantity;
import liftwright.quantity.SiText;
import liftwright.rig.Rig;
import liftwright.rig.correction.Correction;
import liftwright.rig.correction.Found;
import liftwright.rig.correction.Grounds;

/** What an answer says of corrections: how many count, what they found, what is void and why. */
public final class CorrectionWords {

    /** The values that went farthest are told one by one; the file has all of them. */
    private static final int TOLD = 12;

    private CorrectionWords() {}

    /** An answer's evidence with what the corrections of its rig put in. */
    static Evidence on(Plant plant, Evidence evidence) {
        return on(plant.rig(), plant.corrections(), evidence);
    }

    /** The same of a rig whose corrections were judged. */
    public static Evidence on(Rig rig, HeldCorrections judged, Evidence evidence) {
        if (rig.corrections().isEmpty()) {
            return evidence;
        }
        return evidence.corrected(
                rig.corrections().digest(),
                new Evidence.Corrected(
                        judged.values(),
                        judged.voided(),
                        rig.corrections().ofAnotherRevision(),
                        judged.voids().stream().map(Voided::words).distinct().toList()),
                told(judged));
    }

    private static List<Evidence.Told> told(HeldCorrections judged) {
        record Moved(Correction group, Found found, double far) {}
        List<Moved> moved = new ArrayList<>();
        for (Correction group : judged.held()) {
            for (Found found : group.found()) {
                moved.add(new Moved(group, found, far(found)));
            }
        }
        moved.sort(Comparator.comparingDouble((Moved one) -> -one.far()));
        List<Evidence.Told> told = new ArrayList<>();
        for (Moved one : moved.subList(0, Math.min(TOLD, moved.size()))) {
            told.add(
                    new Evidence.Told(
                            one.found().parameter(),
                            Sentence.words(found(one.found(), one.group().grounds()))));
        }
        if (moved.size() > TOLD) {
            told.add(
                    new Evidence.Told(
                            "corrections",
                            Sentence.words(
                                    (moved.size() - TOLD)
                                            + " more values, which went less far: they stand in"
                                            + " the file of corrections")));
        }
        return told;
    }

    /** How far a value went, in half-widths of what was declared. */
    static double far(Found found) {
        double by = found.value() - found.declared().si();
        double wide =
                by < 0 ? found.declared().tolerance().minus() : found.declared().tolerance().plus();
        return Math.abs(by) / Math.max(wide, Double.MIN_NORMAL);
    }

    private static String found(Found found, Grounds grounds) {
        return shown(found.value(), found)
                + " ("
                + shown(found.low(), found)
                + " to "
                + shown(found.high(), found)
                + "), declared "
                + SiText.of(found.declared())
                + "; found by "
                + tests(grounds);
    }

    /** To four figures, SI, with its unit. */
    private static String shown(double si, Found found) {
        double rounded = new BigDecimal(si).round(new MathContext(4)).doubleValue();
        return SiText.of(Quantity.exact(rounded, found.declared().dimension()));
    }

    private static String tests(Grounds grounds) {
        String names =
                grounds.tests().stream().map(Grounds.Test::id).collect(Collectors.joining(", "));
        return (grounds.tests().size() == 1 ? "test " : "tests ") + names;
    }

    /** What is void, and that the file was another; both only tell. */
    public static List<Finding> findings(Rig rig, HeldCorrections judged) {
        List<Finding> findings = new ArrayList<>();
        for (Voided one : judged.voids()) {
            findings.add(
                    Finding.of(
                            Severity.WARNS,
                            "correction-void",
                            Sentence.words(
                                    one.parameter()
                                                    .map(name -> "what tests found of " + name)
                                                    .orElse(
                                                            "what tests found together as "
                                                                    + one.group()
                                                                    + " ("
                                                                    + values(one.values())
                                                                    + ")")
                                            + " is void: what is declared counts"),
                            one.words() + "; fit again to tell what is there now"));
        }
        if (rig.corrections().ofAnotherRevision() && !judged.held().isEmpty()) {
            findings.add(
                    Finding.of(
                            Severity.NOTES,
                            "corrections-of-another-revision",
                            Sentence.words(
                                    values(judged.values())
                                            + " found by tests on another revision of the rig file"
                                            + (judged.values() == 1 ? " counts" : " count")),
                            "nothing that they started from has changed; no verdict becomes better"
                                    + " by them until they are fitted to this one"));
        }
        return findings;
    }

    private static String values(int count) {
        return count == 1 ? "1 value" : count + " values";
    }
}
