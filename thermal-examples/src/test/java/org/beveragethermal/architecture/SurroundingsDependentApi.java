/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.architecture;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitCallTarget;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import java.util.Set;
import java.util.stream.Collectors;

/** Methods and constructors of the JDK whose result depends on the machine's locale, time zone, charset or clock. */
final class SurroundingsDependentApi {
    private static final Set<String> DEFAULT_LOCALE = Set.of(
            "java.lang.String.format(java.lang.String,[Ljava.lang.Object;)",
            "java.lang.String.formatted([Ljava.lang.Object;)",
            "java.lang.String.toLowerCase()",
            "java.lang.String.toUpperCase()",
            "java.io.PrintStream.format(java.lang.String,[Ljava.lang.Object;)",
            "java.io.PrintStream.printf(java.lang.String,[Ljava.lang.Object;)",
            "java.io.PrintWriter.format(java.lang.String,[Ljava.lang.Object;)",
            "java.io.PrintWriter.printf(java.lang.String,[Ljava.lang.Object;)",
            "java.text.Collator.getInstance()",
            "java.text.DateFormat.getDateInstance()",
            "java.text.DateFormat.getDateTimeInstance()",
            "java.text.DateFormat.getInstance()",
            "java.text.DateFormat.getTimeInstance()",
            "java.text.DecimalFormat.<init>()",
            "java.text.DecimalFormat.<init>(java.lang.String)",
            "java.text.DecimalFormatSymbols.<init>()",
            "java.text.DecimalFormatSymbols.getInstance()",
            "java.text.MessageFormat.<init>(java.lang.String)",
            "java.text.MessageFormat.format(java.lang.String,[Ljava.lang.Object;)",
            "java.text.NumberFormat.getCompactNumberInstance()",
            "java.text.NumberFormat.getInstance()",
            "java.text.NumberFormat.getIntegerInstance()",
            "java.text.NumberFormat.getNumberInstance()",
            "java.text.NumberFormat.getPercentInstance()",
            "java.text.SimpleDateFormat.<init>()",
            "java.text.SimpleDateFormat.<init>(java.lang.String)",
            "java.time.format.DateTimeFormatter.ofLocalizedDate(java.time.format.FormatStyle)",
            "java.time.format.DateTimeFormatter.ofLocalizedDateTime(java.time.format.FormatStyle)",
            "java.time.format.DateTimeFormatter.ofLocalizedTime(java.time.format.FormatStyle)",
            "java.time.format.DateTimeFormatter.ofPattern(java.lang.String)",
            "java.time.format.DateTimeFormatterBuilder.toFormatter()",
            "java.util.Formatter.<init>()",
            "java.util.Formatter.<init>(java.lang.Appendable)",
            "java.util.Locale.getDefault()",
            "java.util.Locale.getDefault(java.util.Locale$Category)",
            "java.util.Locale.setDefault(java.util.Locale)",
            "java.util.Scanner.<init>(java.lang.String)");

    private static final Set<String> DEFAULT_CHARSET = Set.of(
            "java.io.ByteArrayOutputStream.toString()",
            "java.io.FileReader.<init>(java.io.File)",
            "java.io.FileReader.<init>(java.lang.String)",
            "java.io.FileWriter.<init>(java.io.File)",
            "java.io.FileWriter.<init>(java.io.File,boolean)",
            "java.io.FileWriter.<init>(java.lang.String)",
            "java.io.FileWriter.<init>(java.lang.String,boolean)",
            "java.io.InputStreamReader.<init>(java.io.InputStream)",
            "java.io.OutputStreamWriter.<init>(java.io.OutputStream)",
            "java.io.PrintStream.<init>(java.io.File)",
            "java.io.PrintStream.<init>(java.io.OutputStream)",
            "java.io.PrintStream.<init>(java.io.OutputStream,boolean)",
            "java.io.PrintStream.<init>(java.lang.String)",
            "java.io.PrintWriter.<init>(java.io.File)",
            "java.io.PrintWriter.<init>(java.io.OutputStream)",
            "java.io.PrintWriter.<init>(java.io.OutputStream,boolean)",
            "java.io.PrintWriter.<init>(java.lang.String)",
            "java.lang.String.<init>([B)",
            "java.lang.String.<init>([B,int,int)",
            "java.lang.String.getBytes()",
            "java.nio.charset.Charset.defaultCharset()",
            "java.util.Scanner.<init>(java.io.File)",
            "java.util.Scanner.<init>(java.io.InputStream)",
            "java.util.Scanner.<init>(java.nio.file.Path)");

    private static final Set<String> DEFAULT_TIME_ZONE = Set.of(
            "java.time.Clock.systemDefaultZone()",
            "java.time.ZoneId.systemDefault()",
            "java.util.Calendar.getInstance()",
            "java.util.TimeZone.getDefault()",
            "java.util.TimeZone.setDefault(java.util.TimeZone)");

    private static final Set<String> MACHINE_CLOCK = Set.of(
            "java.lang.System.currentTimeMillis()",
            "java.lang.System.nanoTime()",
            "java.time.Clock.systemUTC()",
            "java.time.Clock.system(java.time.ZoneId)",
            "java.time.Instant.now()",
            "java.time.LocalDate.now()",
            "java.time.LocalDate.now(java.time.ZoneId)",
            "java.time.LocalDateTime.now()",
            "java.time.LocalDateTime.now(java.time.ZoneId)",
            "java.time.LocalTime.now()",
            "java.time.LocalTime.now(java.time.ZoneId)",
            "java.time.OffsetDateTime.now()",
            "java.time.OffsetDateTime.now(java.time.ZoneId)",
            "java.time.ZonedDateTime.now()",
            "java.time.ZonedDateTime.now(java.time.ZoneId)",
            "java.util.Date.<init>()");

    private SurroundingsDependentApi() {}

    static DescribedPredicate<JavaCall<?>> defaultLocale() {
        return among("calls that use the default locale", DEFAULT_LOCALE);
    }

    static DescribedPredicate<JavaCall<?>> defaultCharset() {
        return among("calls that use the default charset", DEFAULT_CHARSET);
    }

    static DescribedPredicate<JavaCall<?>> defaultTimeZone() {
        return among("calls that use the default time zone", DEFAULT_TIME_ZONE);
    }

    static DescribedPredicate<JavaCall<?>> machineClock() {
        return among("calls that read the machine's clock", MACHINE_CLOCK);
    }

    private static DescribedPredicate<JavaCall<?>> among(String description, Set<String> signatures) {
        return DescribedPredicate.describe(description, call -> signatures.contains(signature(call.getTarget())));
    }

    private static String signature(CodeUnitCallTarget target) {
        String parameters =
                target.getRawParameterTypes().stream().map(JavaClass::getName).collect(Collectors.joining(","));
        return target.getOwner().getName() + "." + target.getName() + "(" + parameters + ")";
    }
}
