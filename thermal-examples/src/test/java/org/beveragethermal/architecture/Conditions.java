/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.architecture;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.core.domain.JavaTypeVariable;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Conditions on classes that the rule language does not offer by itself. */
final class Conditions {
    private static final Pattern MODULE = Pattern.compile("(org\\.beveragethermal\\.[a-z]+)(\\..*)?");
    private static final Pattern INTERNAL = Pattern.compile("(.*\\.)?internal(\\..*)?");

    private Conditions() {}

    /** Every type a user meets (supertypes, members' types, their type arguments and bounds) is an allowed one. */
    static ArchCondition<JavaClass> showUsersOnlyTypesIn(String description, Predicate<JavaClass> allowed) {
        return new ArchCondition<>("show users only " + description) {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                shownTypes(type)
                        .filter(shown -> !allowed.test(shown.type().getBaseComponentType()))
                        .forEach(shown -> events.add(SimpleConditionEvent.violated(
                                type, shown.by() + " shows " + shown.type().getName())));
            }
        };
    }

    /** No class refers to a package named internal, of ours or of others, outside its own module. */
    static ArchCondition<JavaClass> keepOutOfForeignInternals() {
        return new ArchCondition<>("keep out of the internal packages of other modules and libraries") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
                    String target =
                            dependency.getTargetClass().getBaseComponentType().getPackageName();
                    if (INTERNAL.matcher(target).matches() && !module(target).equals(module(type.getPackageName()))) {
                        events.add(SimpleConditionEvent.violated(type, dependency.getDescription()));
                    }
                }
            }
        };
    }

    private record Shown(String by, JavaClass type) {}

    private static Stream<Shown> shownTypes(JavaClass type) {
        Stream<JavaType> supertypes = Stream.concat(type.getSuperclass().stream(), type.getInterfaces().stream());
        Stream<Shown> byType = Stream.concat(supertypes, bounds(type.getTypeParameters()))
                .flatMap(supertype -> shown("type " + type.getName(), supertype));
        Stream<Shown> byMembers = type.getMembers().stream()
                .filter(Conditions::isOffered)
                .flatMap(member -> memberTypes(member).flatMap(shown -> shown(member.getDescription(), shown)));
        return Stream.concat(byType, byMembers);
    }

    private static Stream<JavaType> memberTypes(JavaMember member) {
        if (member instanceof JavaField field) {
            return Stream.of(field.getType());
        }
        if (member instanceof JavaCodeUnit unit) {
            Stream<JavaType> own = Stream.concat(Stream.of(unit.getReturnType()), unit.getParameterTypes().stream());
            Stream<JavaType> thrown = unit.getExceptionTypes().stream().map(JavaType.class::cast);
            return Stream.concat(Stream.concat(own, thrown), bounds(unit.getTypeParameters()));
        }
        return Stream.empty();
    }

    private static Stream<JavaType> bounds(List<? extends JavaTypeVariable<?>> variables) {
        return variables.stream().flatMap(variable -> variable.getBounds().stream());
    }

    private static Stream<Shown> shown(String by, JavaType type) {
        return type.getAllInvolvedRawTypes().stream().map(raw -> new Shown(by, raw));
    }

    private static boolean isOffered(JavaMember member) {
        return !member.getModifiers().contains(JavaModifier.SYNTHETIC)
                && (member.getModifiers().contains(JavaModifier.PUBLIC)
                        || member.getModifiers().contains(JavaModifier.PROTECTED));
    }

    /** Whether users can name the type: public, as are the types around it, and not in an internal package. */
    static boolean isOffered(JavaClass type) {
        boolean visible = type.getModifiers().contains(JavaModifier.PUBLIC)
                || type.getModifiers().contains(JavaModifier.PROTECTED);
        Optional<JavaClass> outer = type.getEnclosingClass();
        return visible
                && !INTERNAL.matcher(type.getPackageName()).matches()
                && outer.map(Conditions::isOffered).orElse(true);
    }

    private static Optional<String> module(String packageName) {
        Matcher matcher = MODULE.matcher(packageName);
        return matcher.matches() ? Optional.of(matcher.group(1)) : Optional.empty();
    }
}
