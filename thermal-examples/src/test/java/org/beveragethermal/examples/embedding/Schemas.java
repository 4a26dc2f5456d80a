/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;

/** The published schemas as a general-purpose validator of JSON Schema 2020-12 (com.networknt:json-schema-validator) reads them. */
final class Schemas {

    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    static final Schema EVENTS = REGISTRY.getSchema(EventDesk.eventsSchema(), InputFormat.JSON);
    static final Schema ANSWERS = REGISTRY.getSchema(EventDesk.answersSchema(), InputFormat.JSON);

    /** What a schema must be like, as the standard has it. */
    static final Schema SCHEMA = REGISTRY.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));

    private Schemas() {}

    static List<Error> errors(Schema schema, String json) {
        return schema.validate(
                json,
                InputFormat.JSON,
                context -> context.executionConfig(config -> config.formatAssertionsEnabled(true)));
    }

    static void requireAnswer(String json) {
        assertThat(errors(ANSWERS, json)).as("answer %s", json).isEmpty();
    }

    static void requireEvents(String json) {
        assertThat(errors(EVENTS, json)).as("message %s", json).isEmpty();
    }
}
