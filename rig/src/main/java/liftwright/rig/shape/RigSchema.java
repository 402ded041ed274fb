package liftwright.rig.shape;

import java.util.ArrayList;
import java.util.List;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.AmountRange;
import liftwright.rig.shape.kind.Either;
import liftwright.rig.shape.kind.FilePath;
import liftwright.rig.shape.kind.Gauge;
import liftwright.rig.shape.kind.Ident;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Kind;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.MapOf;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Name;
import liftwright.rig.shape.kind.Need;
import liftwright.rig.shape.kind.NoiseDensity;
import liftwright.rig.shape.kind.Reference;
import liftwright.rig.shape.kind.Rule;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Sensed;
import liftwright.rig.shape.kind.Text;
import liftwright.rig.shape.kind.Whole;
import liftwright.rig.shape.kind.Word;
import liftwright.rig.shape.kind.YesNo;

/**
 * The table of keys as JSON Schema (draft 2020-12), for editors. It checks keys, words and counts;
 * units, ranges and references are the reader's. Whatever the reader takes, the schema takes.
 */
public final class RigSchema {

    /** A number and at least one more character: what it may be is the reader's to say. */
    private static final String AMOUNT = "^[+−-]?\\.?[0-9].*[^0-9. ]";

    /** As an amount, or a doubt alone. */
    private static final String SENSED = "^(± *)?[+−-]?\\.?[0-9].*[^0-9. ]";

    private static final String DOUBT = "^[±+]";
    private static final String GAUGE = "^([0-9]|[1-3][0-9]|40|[1-4]/0) *AWG$";

    private final JsonText json = new JsonText();

    private RigSchema() {}

    /** The schema as a file, with a line feed at its end. */
    public static String text() {
        return new RigSchema().write();
    }

    private String write() {
        json.open('{');
        json.text("$schema", "https://json-schema.org/draft/2020-12/schema");
        json.text("title", "Liftwright rig file, format 1");
        json.text("$ref", ref(Shape.root()));
        json.open("$defs", '{');
        Shape.sections().values().forEach(this::section);
        json.close('}');
        json.close('}');
        return json.toString();
    }

    private static String ref(Section section) {
        return "#/$defs/" + section.name().replace(' ', '-');
    }

    private void section(Section section) {
        json.open(section.name().replace(' ', '-'), '{');
        json.text("description", section.meaning());
        json.text("type", "object");
        json.open("properties", '{');
        section.keys().forEach(this::key);
        json.close('}');
        var required =
                section.keys().stream()
                        .filter(key -> key.need() instanceof Need.Required)
                        .map(Key::name)
                        .toList();
        if (!required.isEmpty()) {
            json.texts("required", required);
        }
        json.raw("additionalProperties", "false");
        rules(section);
        json.close('}');
    }

    private void key(Key<?> key) {
        json.open(key.name(), '{');
        json.text("description", key.meaning());
        if (key.need() instanceof Need.Default(var text, var _)) {
            json.text("default", text);
        }
        kind(key.kind());
        json.close('}');
    }

    private void kind(Kind<?> kind) {
        switch (kind) {
            case Section section -> json.text("$ref", ref(section));
            case Amount amount -> amount(amount.measure(), amount.implied());
            case AmountRange range -> amount(range.measure(), "");
            case NoiseDensity _ -> string("√Hz");
            case Gauge _ -> string(GAUGE);
            case FilePath file -> string(file.ending().replace(".", "\\.") + "$");
            case Ident _ -> {
                string(Name.PATTERN);
                json.raw("maxLength", Integer.toString(Name.LONGEST));
            }
            case Reference _ -> json.text("type", "string");
            case Sensed _ -> string(SENSED);
            case Text _ -> json.texts("type", List.of("string", "number"));
            case Whole whole -> {
                json.text("type", "integer");
                json.raw("minimum", Integer.toString(whole.least()));
                json.raw("maximum", Integer.toString(whole.most()));
            }
            // some editors take yes and no for truth values
            case YesNo _ -> json.raw("enum", "[\"yes\", \"no\", true, false]");
            case Word<?> word -> json.raw("enum", words(word));
            case ListOf<?> list -> {
                json.text("type", "array");
                json.raw("minItems", Integer.toString(list.least()));
                json.raw("maxItems", Integer.toString(list.most()));
                json.open("items", '{');
                kind(list.item());
                json.close('}');
            }
            case MapOf<?> map -> {
                json.text("type", "object");
                if (map.names() == MapOf.Names.NEW) {
                    json.raw(
                            "propertyNames",
                            "{\"pattern\": " + JsonText.quoted(Name.PATTERN) + "}");
                }
                json.open("additionalProperties", '{');
                kind(map.value());
                json.close('}');
            }
            case Either<?, ?> either -> {
                json.open("anyOf", '[');
                json.item().open('{');
                kind(either.one());
                json.close('}');
                json.item().open('{');
                kind(either.other());
                json.close('}');
                json.close(']');
            }
        }
    }

    /** Numbers without unit are read by editors as numbers. */
    private void amount(Measure measure, String implied) {
        if (!implied.isEmpty()) {
            string(DOUBT);
        } else if (measure == Measure.RATIO
                || measure == Measure.SHARE
                || measure == Measure.SOUND_LEVEL) {
            json.texts("type", List.of("string", "number"));
        } else {
            string(AMOUNT);
        }
    }

    /** A word that looks like a number is read by editors as one. */
    private static String words(Word<?> word) {
        String texts = JsonText.list(word.words().keySet());
        String numbers =
                word.words().keySet().stream()
                        .filter(text -> text.matches("[0-9]+\\.[0-9]+"))
                        .map(text -> ", " + text)
                        .collect(java.util.stream.Collectors.joining());
        return texts.substring(0, texts.length() - 1) + numbers + "]";
    }

    private void string(String pattern) {
        json.text("type", "string");
        json.text("pattern", pattern);
    }

    private void rules(Section section) {
        var all = new ArrayList<String>();
        for (Rule rule : section.rules()) {
            switch (rule) {
                case Rule.AtMostOne(var keys) -> {
                    for (int i = 0; i < keys.size(); i++) {
                        for (int j = i + 1; j < keys.size(); j++) {
                            all.add("{\"not\": " + required(keys.get(i), keys.get(j)) + "}");
                        }
                    }
                }
                case Rule.AtLeastOne(var keys) -> all.add(anyOf("", keys));
                case Rule.Needs(var key, var others) -> {
                    for (Key<?> other : others) {
                        all.add(anyOf("{\"not\": " + required(key) + "}, ", List.of(other)));
                    }
                }
                case Rule.OnlyWith(var key, var others) ->
                        all.add(anyOf("{\"not\": " + required(key) + "}, ", others));
            }
        }
        if (all.isEmpty()) {
            return;
        }
        json.open("allOf", '[');
        all.forEach(one -> json.item().json(one));
        json.close(']');
    }

    private static String anyOf(String before, List<Key<?>> keys) {
        return keys.stream()
                .map(RigSchema::required)
                .collect(java.util.stream.Collectors.joining(", ", "{\"anyOf\": [" + before, "]}"));
    }

    private static String required(Key<?>... keys) {
        return "{\"required\": "
                + JsonText.list(java.util.Arrays.stream(keys).map(Key::name).toList())
                + "}";
    }
}
