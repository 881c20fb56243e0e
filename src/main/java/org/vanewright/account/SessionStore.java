package org.vanewright.account;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InvalidClassException;
import java.io.ObjectInputFilter;
import java.io.ObjectInputStream;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.convert.ConversionService;
import org.springframework.core.convert.TypeDescriptor;
import org.springframework.core.convert.converter.GenericConverter;
import org.springframework.core.convert.support.GenericConversionService;
import org.springframework.core.serializer.DefaultSerializer;
import org.springframework.core.serializer.support.SerializingConverter;
import org.springframework.scheduling.annotation.EnableScheduling;
import org.springframework.session.config.SessionRepositoryCustomizer;
import org.springframework.session.jdbc.JdbcIndexedSessionRepository;

/** How sessions stand in the database. */
@EnableScheduling
@Configuration(proxyBeanMethods = false)
class SessionStore {
    private static final Logger LOG = LoggerFactory.getLogger(SessionStore.class);

    /** Only what a session of this service holds. */
    private static final ObjectInputFilter EXPECTED = ObjectInputFilter.Config.createFilter(
            "java.lang.*;java.util.*;java.time.*;org.springframework.security.**;maxdepth=20;maxbytes=2000000;!*");

    /** Two requests of one session may add the same attribute at once; the first stands. */
    @Bean
    SessionRepositoryCustomizer<JdbcIndexedSessionRepository> oneOfEachAttribute() {
        return store -> store.setCreateSessionAttributeQuery(
                "insert into %TABLE_NAME%_attributes (session_primary_id, attribute_name, attribute_bytes)"
                        + " values (?, ?, ?) on conflict do nothing");
    }

    @Bean
    ConversionService springSessionConversionService() {
        GenericConversionService conversions = new GenericConversionService();
        conversions.addConverter(Object.class, byte[].class, new SerializingConverter(new DefaultSerializer()));
        conversions.addConverter(new Reading());
        return conversions;
    }

    private static final class Reading implements GenericConverter {
        @Override
        public Set<ConvertiblePair> getConvertibleTypes() {
            return Set.of(new ConvertiblePair(byte[].class, Object.class));
        }

        @Override
        public @Nullable Object convert(@Nullable Object source, TypeDescriptor from, TypeDescriptor to) {
            return source instanceof byte[] bytes ? read(bytes) : null;
        }
    }

    /** What an earlier version wrote and this one cannot read is as if it had never been there. */
    private static @Nullable Object read(byte[] bytes) {
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes))) {
            in.setObjectInputFilter(EXPECTED);
            return in.readObject();
        } catch (InvalidClassException | ClassNotFoundException e) {
            LOG.info("a session's attribute is of another version and was left out");
            return null;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
