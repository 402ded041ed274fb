package liftwright.rig.correction.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import liftwright.quantity.Quantity;
import liftwright.quantity.SiText;
import liftwright.rig.Problem.Code;
import liftwright.rig.correction.Correction;
import liftwright.rig.correction.Corrections;
import liftwright.rig.correction.Found;
import liftwright.rig.correction.Grounds;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.text.Node;

/** Makes corrections of the tree of their file, or tells everything that is wrong with it. */
final class CorrectionsBinder {

    private static final Pattern DIGEST = Pattern.compile("sha256:[0-9a-f]{64}");
    private static final Pattern NUMBER =
            Pattern.compile("-?[0-9]{1,40}(\\.[0-9]{1,40})?([eE][+-]?[0-9]{1,3})?");

    private final Problems problems;
    private final Map<String, String> groupOf = new HashMap<>();

    CorrectionsBinder(Problems problems) {
        this.problems = problems;
    }

    /** Empty where something that is needed could not be read. */
    Optional<Corrections> read(Node root) {
        Spot top = Spot.top(root.span());
        if (root instanceof Node.Entries map && isOfAnotherFormat(map, top)) {
            return Optional.empty();
        }
        return CorrectionsKeys.FILE.read(root, top, problems).flatMap(this::corrections);
    }

    /** Of a later format only the version is a problem. */
    private boolean isOfAnotherFormat(Node.Entries map, Spot top) {
        String format = CorrectionsKeys.FORMAT.name();
        if (!(map.value(format).orElse(null) instanceof Node.Scalar version)
                || !version.value().matches("[1-9][0-9]{0,5}")
                || version.value().equals(String.valueOf(CorrectionsKeys.FORMAT_NUMBER))) {
            return false;
        }
        problems.add(
                Code.UNSUPPORTED_VERSION,
                top.child(format, version.span()),
                "format " + version.value(),
                "format " + CorrectionsKeys.FORMAT_NUMBER,
                "A newer Liftwright wrote this file: use that one.");
        return true;
    }

    private Optional<Corrections> corrections(Fields file) {
        Optional<String> rig = file.stated(CorrectionsKeys.RIG).flatMap(this::digest);
        List<Correction> groups = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (Stated<Fields> stated : file.get(CorrectionsKeys.GROUPS).orElse(List.of())) {
            Fields fields = stated.value();
            fields.stated(CorrectionsKeys.NAME).ifPresent(name -> newName(name, names));
            group(fields).ifPresent(groups::add);
        }
        Optional<String> seal = file.stated(CorrectionsKeys.SEAL).flatMap(this::digest);
        if (problems.hasErrors() || rig.isEmpty() || seal.isEmpty()) {
            return Optional.empty();
        }
        int revision = file.get(CorrectionsKeys.REVISION).orElseThrow();
        Corrections read = new Corrections(rig.get(), revision, groups);
        if (!CorrectionsText.seal(read).equals(seal.get())) {
            problems.add(
                    Code.CONTRADICTION,
                    file.spotOf(CorrectionsKeys.SEAL),
                    "a seal of other values",
                    "the values that were sealed: somebody edited the file",
                    CorrectionsReading.ADVICE);
            return Optional.empty();
        }
        return Optional.of(read);
    }

    private void newName(Stated<String> name, Set<String> names) {
        if (name.value().isBlank()) {
            problems.add(
                    Code.WRONG_KIND, name.spot(), "nothing", "a name", CorrectionsReading.ADVICE);
        } else if (!names.add(name.value())) {
            problems.add(
                    Code.DUPLICATE_ID,
                    name.spot(),
                    Problems.quote(name.value()),
                    "a name that no other correction has",
                    CorrectionsReading.ADVICE);
        }
    }

    private Optional<Correction> group(Fields fields) {
        Map<String, String> serials = new HashMap<>();
        fields.get(CorrectionsKeys.SERIALS)
                .orElse(Map.of())
                .forEach((part, serial) -> serials.put(part, serial.value()));
        Optional<Grounds> grounds = grounds(fields);
        List<Stated<Fields>> stated = fields.get(CorrectionsKeys.VALUES).orElse(List.of());
        List<Found> found = new ArrayList<>();
        List<Double> correlations = new ArrayList<>();
        for (int i = 0; i < stated.size(); i++) {
            Fields one = stated.get(i).value();
            one.stated(CorrectionsKeys.PARAMETER)
                    .ifPresent(name -> parameter(name, fields, serials));
            found(one).ifPresent(found::add);
            correlations.addAll(correlations(one, i));
        }
        if (problems.hasErrors() || grounds.isEmpty() || found.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(
                    new Correction(
                            fields.get(CorrectionsKeys.NAME).orElseThrow(),
                            found,
                            correlations,
                            grounds.get(),
                            serials));
        } catch (IllegalArgumentException impossible) {
            problems.add(
                    Code.CONTRADICTION,
                    fields.spotOf(CorrectionsKeys.VALUES),
                    "correlations that no values can have",
                    "those of a covariance",
                    CorrectionsReading.ADVICE);
            return Optional.empty();
        }
    }

    private void parameter(Stated<String> name, Fields group, Map<String, String> serials) {
        String text = name.value();
        int colon = text.indexOf(": ");
        String path = colon < 0 ? text : text.substring(colon + 2);
        if (path.indexOf('/') < 1 || path.endsWith("/") || colon == 0) {
            problems.add(
                    Code.UNKNOWN_WORD,
                    name.spot(),
                    Problems.quote(text),
                    "a path of the rig file, such as “fan types/F140/installation”, behind the id"
                            + " of a part and a colon where the part has its own",
                    CorrectionsReading.ADVICE);
            return;
        }
        String where = group.get(CorrectionsKeys.NAME).orElse("");
        if (groupOf.putIfAbsent(text, where) != null) {
            problems.add(
                    Code.DUPLICATE_KEY,
                    name.spot(),
                    Problems.quote(text) + " again",
                    "every parameter once in the file",
                    CorrectionsReading.ADVICE);
        }
        if (colon > 0 && !serials.containsKey(text.substring(0, colon))) {
            problems.add(
                    Code.CONTRADICTION,
                    name.spot(),
                    "no serial number of " + Problems.quote(text.substring(0, colon)),
                    "each part of a correction among its “serials”, empty if it had none",
                    CorrectionsReading.ADVICE);
        }
    }

    private Optional<Grounds> grounds(Fields fields) {
        List<Grounds.Test> tests = new ArrayList<>();
        for (Stated<Fields> stated : fields.get(CorrectionsKeys.TESTS).orElse(List.of())) {
            Optional<String> id =
                    stated.value().stated(CorrectionsKeys.TEST_ID).flatMap(this::testId);
            Optional<String> digest =
                    stated.value().stated(CorrectionsKeys.TEST_DIGEST).flatMap(this::digest);
            id.ifPresent(i -> digest.ifPresent(d -> tests.add(new Grounds.Test(i, d))));
        }
        Optional<Stated<String>> stated = fields.stated(CorrectionsKeys.HELD_OUT);
        Optional<Double> heldOut = stated.flatMap(this::notNegative);
        Optional<Double> distance =
                fields.stated(CorrectionsKeys.DISTANCE).flatMap(this::notNegative);
        if (tests.isEmpty() || distance.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Grounds(
                        tests,
                        heldOut.map(OptionalDouble::of).orElseGet(OptionalDouble::empty),
                        distance.get()));
    }

    private Optional<String> testId(Stated<String> id) {
        if (id.value().isBlank()) {
            problems.add(
                    Code.WRONG_KIND,
                    id.spot(),
                    "nothing",
                    "the name of a test",
                    CorrectionsReading.ADVICE);
            return Optional.empty();
        }
        return Optional.of(id.value());
    }

    private Optional<Found> found(Fields fields) {
        Optional<Quantity> declared =
                fields.stated(CorrectionsKeys.DECLARED).flatMap(this::quantity);
        Optional<Quantity> value = value(fields, declared);
        Optional<Boolean> logarithms = fields.get(CorrectionsKeys.DRAWN);
        Optional<Double> deviation =
                fields.stated(CorrectionsKeys.DEVIATION).flatMap(this::notNegative);
        if (value.isPresent() && logarithms.orElse(false) && !(value.get().si() > 0)) {
            problems.add(
                    Code.CONTRADICTION,
                    fields.spotOf(CorrectionsKeys.VALUE),
                    "a value of " + value.get().si() + " that is drawn in logarithms",
                    "a value above 0, or one drawn as it is",
                    CorrectionsReading.ADVICE);
            return Optional.empty();
        }
        if (declared.isEmpty() || value.isEmpty() || logarithms.isEmpty() || deviation.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Found(
                        fields.get(CorrectionsKeys.PARAMETER).orElse(""),
                        fields.get(CorrectionsKeys.LABEL).orElse(""),
                        declared.get(),
                        value.get().si(),
                        deviation.get(),
                        logarithms.get()));
    }

    private Optional<Quantity> value(Fields fields, Optional<Quantity> declared) {
        Optional<Quantity> value = fields.stated(CorrectionsKeys.VALUE).flatMap(this::quantity);
        if (value.isEmpty() || declared.isEmpty()) {
            return Optional.empty();
        }
        if (!value.get().dimension().equals(declared.get().dimension())) {
            problems.add(
                    Code.WRONG_UNIT,
                    fields.spotOf(CorrectionsKeys.VALUE),
                    unit(value.get()),
                    unit(declared.get()) + ", as what was declared",
                    CorrectionsReading.ADVICE);
            return Optional.empty();
        }
        if (!value.get().tolerance().isNone()) {
            problems.add(
                    Code.CONTRADICTION,
                    fields.spotOf(CorrectionsKeys.VALUE),
                    "a value with a doubt of its own",
                    "a value alone: its doubt is “deviation” and “correlations”",
                    CorrectionsReading.ADVICE);
            return Optional.empty();
        }
        return value;
    }

    private static String unit(Quantity quantity) {
        String unit = SiText.unit(quantity.dimension());
        return unit.isEmpty() ? "no unit" : "the unit " + unit;
    }

    private Optional<Quantity> quantity(Stated<String> stated) {
        Optional<Quantity> read = SiText.parse(stated.value());
        if (read.isEmpty()) {
            problems.add(
                    Code.NOT_A_QUANTITY,
                    stated.spot(),
                    Problems.quote(stated.value()),
                    "an SI value with its unit, such as “0.74 kg ± 0.0148 each”",
                    CorrectionsReading.ADVICE);
        }
        return read;
    }

    private List<Double> correlations(Fields fields, int before) {
        List<Stated<String>> stated = fields.get(CorrectionsKeys.CORRELATIONS).orElse(List.of());
        if (fields.failed(CorrectionsKeys.CORRELATIONS)) {
            return List.of();
        }
        if (stated.size() != before) {
            problems.add(
                    Code.OUT_OF_RANGE,
                    fields.spotOf(CorrectionsKeys.CORRELATIONS),
                    numbers(stated.size()),
                    numbers(before) + ", one for each value before it",
                    CorrectionsReading.ADVICE);
            return List.of();
        }
        List<Double> read = new ArrayList<>();
        for (Stated<String> one : stated) {
            Optional<Double> number = number(one);
            if (number.isPresent() && Math.abs(number.get()) > 1) {
                problems.add(
                        Code.OUT_OF_RANGE,
                        one.spot(),
                        one.value(),
                        "a correlation from −1 to 1",
                        CorrectionsReading.ADVICE);
            }
            number.ifPresent(read::add);
        }
        return read;
    }

    private static String numbers(int count) {
        return count == 1 ? "1 number" : count + " numbers";
    }

    private Optional<Double> notNegative(Stated<String> stated) {
        Optional<Double> number = number(stated);
        if (number.isPresent() && number.get() < 0) {
            problems.add(
                    Code.OUT_OF_RANGE,
                    stated.spot(),
                    stated.value(),
                    "a number no less than 0",
                    CorrectionsReading.ADVICE);
            return Optional.empty();
        }
        return number;
    }

    private Optional<Double> number(Stated<String> stated) {
        if (NUMBER.matcher(stated.value()).matches()) {
            double number = Double.parseDouble(stated.value());
            if (Double.isFinite(number)) {
                return Optional.of(number);
            }
        }
        problems.add(
                Code.NOT_A_QUANTITY,
                stated.spot(),
                Problems.quote(stated.value()),
                "a number without a unit",
                CorrectionsReading.ADVICE);
        return Optional.empty();
    }

    private Optional<String> digest(Stated<String> stated) {
        if (DIGEST.matcher(stated.value()).matches()) {
            return Optional.of(stated.value());
        }
        problems.add(
                Code.NOT_A_QUANTITY,
                stated.spot(),
                Problems.quote(stated.value()),
                "sha256: and 64 digits from 0 to f",
                CorrectionsReading.ADVICE);
        return Optional.empty();
    }
}
