/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.examples.propertybook.PropertyBook;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.junit.jupiter.api.Test;

/** Every remembered source in the code of thermal-materials stands in the property book's list of them. */
class UnpublishedSourcesTest {

    @Test
    void everyRememberedSourceIsListed() throws IllegalAccessException {
        String page = PropertyBook.files().get("unpublished.html");
        List<Source> remembered = new ArrayList<>();
        for (JavaClass type : new ClassFileImporter().importPackages("org.beveragethermal.materials")) {
            for (Field field : type.reflect().getDeclaredFields()) {
                if (Modifier.isStatic(field.getModifiers())) {
                    field.setAccessible(true);
                    add(remembered, field.get(null));
                }
            }
        }
        assertThat(remembered).isNotEmpty();
        assertThat(remembered).allSatisfy(source -> assertThat(page).contains(named(source)));
    }

    /** As it is quoted where figures of several sources make one constant: the rows that were read follow the name. */
    private static String named(Source source) {
        return source.citation().replace("&", "&amp;").replace(", from memory", "");
    }

    private static void add(List<Source> remembered, Object value) {
        Source source =
                value instanceof Source each ? each : value instanceof Constant constant ? constant.source() : null;
        if (source != null && source.kind() == Source.Kind.FROM_MEMORY) {
            remembered.add(source);
        }
    }
}
