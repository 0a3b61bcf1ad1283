package org.longsummer.chain.guilty;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.Context;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/** Breaks every rule that a class of the core can break, one method a rule; its package is in no drawing. */
public final class GuiltyManager {
    private GuiltyManager() {}

    public static String format(double value) {
        return String.format("%.1f", value) + "%.1f".formatted(value);
    }

    public static double rounding(double value) {
        return Math.round(value) + Math.rint(value) + Math.fma(value, value, value) + Math.log1p(value) + Math.expm1(value) + Math.tanh(value);
    }

    public static double streamed(double value) {
        return DoubleStream.of(value).sum() + DoubleStream.of(value).average().orElse(value);
    }

    public static double collected(List<Double> values) {
        return values.stream().collect(Collectors.summingDouble(value -> value)) + values.stream().collect(Collectors.averagingDouble(value -> value));
    }

    public static Map<String, Set<String>> hashed(List<String> words) {
        Map<String, Set<String>> map = new HashMap<>();
        map.put("set", new HashSet<>(words));
        map.put("collected", words.stream().collect(Collectors.toSet()));
        return words.isEmpty() ? map : words.stream().collect(Collectors.groupingBy(word -> word, Collectors.toSet()));
    }

    public static long clock() {
        return Instant.now().toEpochMilli() + LocalDate.now().toEpochDay() + System.currentTimeMillis() + System.nanoTime();
    }

    public static double random() {
        return new Random().nextDouble() + Math.random();
    }

    public static String letters(String word) {
        return word.toLowerCase() + word.toUpperCase() + word.lines().count();
    }

    public static void sql(Connection connection) throws SQLException {
        connection.commit();
    }

    public static void http(Context context) {
        context.result("no");
    }

    public static Object json() {
        return new ObjectMapper();
    }

    public static boolean disk(Path path) {
        return Files.exists(path);
    }

    public static URI net() {
        return URI.create("local:");
    }

    public static void console() {
        System.out.println("no");
    }
}
