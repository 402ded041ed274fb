package liftwright.app.bay;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonFactory;

/**
 * Reads JSON (RFC 8259) strictly: UTF-8, one object and nothing behind it, no name twice, numbers
 * that are finite, and of depth, names, numbers and values no more than the page ever sends.
 */
final class JsonReader {

    static final int MOST_DEPTH = 32;
    static final int MOST_VALUES = 50_000;
    static final int MOST_NAME = 200;
    static final int MOST_NUMBER = 40;

    private static final JsonFactory FACTORY =
            JsonFactory.builder()
                    .streamReadConstraints(
                            StreamReadConstraints.builder()
                                    .maxNestingDepth(MOST_DEPTH)
                                    .maxNameLength(MOST_NAME)
                                    .maxNumberLength(MOST_NUMBER)
                                    .build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build();

    private final JsonParser parser;
    private int values;

    private JsonReader(JsonParser parser) {
        this.parser = parser;
    }

    /**
     * The object that {@code bytes} write.
     *
     * @throws FaultException when they are anything else
     */
    static Json.Members read(byte[] bytes) {
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), decoded(bytes))) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                throw FaultException.badRequest("The body is no JSON object.");
            }
            Json.Members read = new JsonReader(parser).members();
            if (parser.nextToken() != null) {
                throw FaultException.badRequest("Something stands behind the JSON object.");
            }
            return read;
        } catch (JacksonException e) {
            throw FaultException.badRequest("The body is no JSON, or beyond its limits.");
        }
    }

    private static String decoded(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw FaultException.badRequest("The body is not UTF-8.");
        }
    }

    private Json.Members members() {
        Map<String, Json> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = whole(parser.currentName());
            members.put(name, value(parser.nextToken()));
        }
        return new Json.Members(members);
    }

    private Json items() {
        List<Json> items = new ArrayList<>();
        for (JsonToken token = parser.nextToken();
                token != JsonToken.END_ARRAY;
                token = parser.nextToken()) {
            items.add(value(token));
        }
        return new Json.Items(items);
    }

    private Json value(JsonToken token) {
        if (++values > MOST_VALUES) {
            throw FaultException.badRequest("The body holds too many values.");
        }
        return switch (token) {
            case START_OBJECT -> members();
            case START_ARRAY -> items();
            case VALUE_STRING -> new Json.Text(whole(parser.getString()));
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> amount();
            case VALUE_TRUE -> new Json.Truth(true);
            case VALUE_FALSE -> new Json.Truth(false);
            case VALUE_NULL -> new Json.Nothing();
            case NOT_AVAILABLE, END_OBJECT, END_ARRAY, PROPERTY_NAME, VALUE_EMBEDDED_OBJECT ->
                    throw FaultException.badRequest("The body is no JSON.");
        };
    }

    private Json amount() {
        double value = parser.getDoubleValue();
        if (!Double.isFinite(value)) {
            throw FaultException.badRequest("The body holds a number too large.");
        }
        return new Json.Amount(value);
    }

    /** Half a surrogate pair cannot be written into any file. */
    private static String whole(String text) {
        if (text.codePoints().anyMatch(c -> Character.getType(c) == Character.SURROGATE)) {
            throw FaultException.badRequest("The body holds half a character.");
        }
        return text;
    }
}
