package org.longsummer.web;

import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.introspect.BeanPropertyDefinition;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.longsummer.web.ApiDescription.Operation;
import org.longsummer.web.WebServer.Address;

/**
 * The description of the API as an OpenAPI 3.1 document, made from the addresses that are laid, from what {@link ApiDescription} says of
 * them, and from the very records that are sent and taken, so that it cannot say anything else than what happens.
 */
final class OpenApi {
    private static final Pattern PART = Pattern.compile("\\{([^}]+)}");
    private static final Map<String, Object> PROBLEMS = reference("Problems");

    private final ObjectMapper mapper;
    private final Map<String, Object> schemas = new TreeMap<>();

    private OpenApi(ObjectMapper mapper) {
        this.mapper = mapper;
    }

    /** @param mapper as it writes the answers */
    static Map<String, Object> of(List<Address> addresses, ObjectMapper mapper) {
        return new OpenApi(mapper).document(addresses);
    }

    /** Addresses of the API; pages and their scripts are none, and neither is what answers for all that is not there. */
    static boolean isDescribed(Address address) {
        return (address.path().startsWith("/api/") || address.path().equals("/health")) && !address.path().contains("*");
    }

    private Map<String, Object> document(List<Address> addresses) {
        Map<String, Map<String, Object>> paths = new TreeMap<>();
        schema(mapper.constructType(Failures.Problems.class));
        addresses.stream().filter(OpenApi::isDescribed).forEach(address -> paths.computeIfAbsent(address.path(), path -> new TreeMap<>())
                .put(address.method().toLowerCase(java.util.Locale.ROOT), operation(address)));
        Map<String, Object> document = new LinkedHashMap<>();
        document.put("openapi", "3.1.0");
        document.put("info", Map.of("title", "Longsummer", "version", "1", "description", "Every page's data. A program asks with a key that a person "
                + "makes on the account page: Authorization: Bearer KEY. Whatever cannot be done is answered with all problems at once, in one shape."));
        document.put("paths", paths);
        document.put("components", Map.of("schemas", schemas, "securitySchemes", securitySchemes()));
        return document;
    }

    private static Map<String, Object> securitySchemes() {
        Map<String, Object> schemes = new TreeMap<>();
        schemes.put("program", Map.of("type", "http", "scheme", "bearer", "description", "a program's key, made on the account page"));
        schemes.put("session", Map.of("type", "apiKey", "in", "cookie", "name", "session", "description", "a person who signed in; its cookie's name may bear a prefix"));
        schemes.put("sheet", Map.of("type", "apiKey", "in", "header", "name", "Authorization", "description", "an owner's link: Authorization: Sheet KEY"));
        return schemes;
    }

    private Map<String, Object> operation(Address address) {
        Optional<Operation> described = ApiDescription.of(address.method(), address.path());
        Map<String, Object> operation = new TreeMap<>();
        operation.put("summary", described.map(Operation::summary).orElse(address.method() + " " + address.path()));
        operation.put("x-needs", address.needs().name().toLowerCase(java.util.Locale.ROOT));
        operation.put("security", security(address.needs()));
        if (described.isEmpty()) {
            operation.put("x-undescribed", true);
        }
        List<Object> parameters = parameters(address, described);
        if (!parameters.isEmpty()) {
            operation.put("parameters", parameters);
        }
        described.flatMap(Operation::takes).ifPresent(kind -> operation.put("requestBody", Map.of("required", true, "content", content(kind))));
        described.map(Operation::takesOther).filter(other -> !other.isEmpty()).ifPresent(other -> operation.put("requestBody",
                Map.of("required", true, "content", Map.of(other, Map.of()))));
        operation.put("responses", responses(described));
        return operation;
    }

    private static List<Object> security(Needs needs) {
        return switch (needs) {
            case NOTHING -> List.of();
            case SIGNED_IN, ADMINISTER -> List.of(Map.of("session", List.of()));
            case SHEET -> List.of(Map.of("sheet", List.of()), Map.of("session", List.of()), Map.of("program", List.of()));
            case SEE, VISIT, LOOK_AFTER -> List.of(Map.of("session", List.of()), Map.of("program", List.of()));
        };
    }

    private static List<Object> parameters(Address address, Optional<Operation> described) {
        List<Object> parameters = new ArrayList<>();
        PART.matcher(address.path()).results().map(part -> part.group(1)).forEach(part -> parameters.add(
                ordered("name", part, "in", "path", "required", true, "schema", Map.of("type", "string"))));
        described.map(Operation::asks).orElse(List.of()).forEach(name -> parameters.add(
                ordered("name", name, "in", "query", "required", false, "schema", Map.of("type", "string"))));
        return parameters;
    }

    private Map<String, Object> responses(Optional<Operation> described) {
        Map<String, Object> responses = new TreeMap<>();
        String status = described.map(operation -> Integer.toString(operation.status())).orElse("2XX");
        String other = described.map(Operation::givesOther).orElse("");
        Map<String, Object> content = described.flatMap(Operation::gives).map(this::content)
                .orElse(Map.of(other.isEmpty() ? "application/json" : other, Map.of()));
        responses.put(status, ordered("description", "done", "content", content));
        if (described.map(Operation::status).filter(given -> given == 201).isPresent()) {
            responses.put("200", ordered("description", "it was there already", "content", content));
        }
        responses.put("default", ordered("description", "not done; all that is wrong", "content", Map.of("application/json", Map.of("schema", PROBLEMS))));
        return responses;
    }

    private Map<String, Object> content(Class<?> kind) {
        Map<String, Object> schema = schema(mapper.constructType(kind));
        return Map.of("application/json", Map.of("schema", schema));
    }

    private Map<String, Object> schema(JavaType type) {
        Class<?> raw = type.getRawClass();
        if (type.isReferenceType()) {
            return schema(type.getReferencedType());
        }
        if (type.isMapLikeType()) {
            return ordered("type", "object", "additionalProperties", schema(type.getContentType()));
        }
        if (type.isCollectionLikeType() || type.isArrayType()) {
            return ordered("type", "array", "items", schema(type.getContentType()));
        }
        if (raw.isEnum()) {
            return ordered("type", "string", "enum", java.util.Arrays.stream(raw.getEnumConstants()).map(Object::toString).toList());
        }
        if (CharSequence.class.isAssignableFrom(raw)) {
            return Map.of("type", "string");
        }
        if (raw == boolean.class || raw == Boolean.class) {
            return Map.of("type", "boolean");
        }
        if (raw.isPrimitive() || Number.class.isAssignableFrom(raw)) {
            return Map.of("type", raw == double.class || raw == float.class || raw == Double.class ? "number" : "integer");
        }
        return raw == Object.class ? Map.of() : component(type);
    }

    private Map<String, Object> component(JavaType type) {
        String name = name(type.getRawClass());
        if (!schemas.containsKey(name)) {
            schemas.put(name, Map.of());
            Map<String, Object> properties = new LinkedHashMap<>();
            List<String> required = new ArrayList<>();
            for (BeanPropertyDefinition property : mapper.getSerializationConfig().introspect(type).findProperties()) {
                JavaType of = property.getAccessor() == null ? property.getPrimaryType() : property.getAccessor().getType();
                properties.put(property.getName(), schema(of));
                if (!of.isReferenceType()) {
                    required.add(property.getName());
                }
            }
            Map<String, Object> schema = ordered("type", "object", "properties", properties);
            if (!required.isEmpty()) {
                schema.put("required", required);
            }
            schemas.put(name, schema);
        }
        return reference(name);
    }

    /** A record's own name, with that of the class that it stands in where it says too little alone. */
    private static String name(Class<?> raw) {
        Class<?> outer = raw.getEnclosingClass();
        return (outer == null || outer == Failures.class ? "" : outer.getSimpleName().replaceFirst("(Api|View)$", "")) + raw.getSimpleName();
    }

    private static Map<String, Object> reference(String name) {
        return Map.of("$ref", "#/components/schemas/" + name);
    }

    private static Map<String, Object> ordered(Object... namesAndValues) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            map.put((String) namesAndValues[i], namesAndValues[i + 1]);
        }
        return map;
    }
}
