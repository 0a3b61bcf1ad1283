package org.longsummer.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import io.javalin.http.Context;
import java.util.List;
import java.util.function.Supplier;
import org.longsummer.web.WebServer.Address;

/** Tells programs what there is: the API's own description. */
final class DescriptionApi {
    private final Supplier<List<Address>> addresses;
    private final ObjectMapper mapper;

    DescriptionApi(Supplier<List<Address>> addresses, ObjectMapper mapper) {
        this.addresses = addresses;
        this.mapper = mapper;
    }

    void show(Context request) throws JsonProcessingException {
        request.contentType("application/json").result(text());
    }

    /** The document with its members in an order that stays. */
    String text() throws JsonProcessingException {
        return mapper.writer().with(SerializationFeature.INDENT_OUTPUT).with(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
                .writeValueAsString(OpenApi.of(addresses.get(), mapper)).replace("\r\n", "\n") + "\n";
    }
}
