package org.vanewright.security;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.servlet.Filter;
import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.core.annotation.AnnotatedElementUtils;
import org.springframework.stereotype.Controller;
import org.springframework.util.ClassUtils;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.platform.page.Units;
import org.vanewright.record.Actors;
import org.vanewright.record.RecordService;
import org.vanewright.record.Records;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.SignInNeededException;

/** The services themselves decide who may call them: without anybody signed in, each method that needs somebody says so. */
class ServiceWalkTest extends WalkCases {
    /** Methods that everybody may call, or that show each caller what is theirs to see. */
    private static final Set<String> OPEN = Set.of(
            "AccessTokens.find",
            "CheckRunner.submitted",
            "Contributions.of",
            "Contributions.page",
            "DeviceService.allPublic",
            "DeviceService.check",
            "DeviceService.children",
            "DeviceService.contentType",
            "DeviceService.contributedBy",
            "DeviceService.contributions",
            "DeviceService.countPublished",
            "DeviceService.createShipped",
            "DeviceService.drafts",
            "DeviceService.everythingPublic",
            "DeviceService.exactly",
            "DeviceService.find",
            "DeviceService.heads",
            "DeviceService.history",
            "DeviceService.imports",
            "DeviceService.isOwn",
            "DeviceService.kind",
            "DeviceService.latest",
            "DeviceService.latestRef",
            "DeviceService.list",
            "DeviceService.listHeads",
            "DeviceService.listedHistory",
            "DeviceService.plural",
            "DeviceService.published",
            "DeviceService.publishedState",
            "DeviceService.reviews",
            "DeviceService.reviseShipped",
            "DeviceService.shown",
            "DeviceService.subject",
            "DeviceService.verify",
            "Drafts.licences",
            "Exports.file",
            "Exports.start",
            "Exports.status",
            "Exports.write",
            "Feeds.all",
            "Feeds.entries",
            "Feeds.ofAirframe",
            "Histories.compare",
            "Histories.of",
            "Imports.asHashed",
            "Imports.canonicalJson",
            "Imports.known",
            "Imports.localised",
            "Imports.read",
            "InstanceSettings.contact",
            "InstanceSettings.name",
            "InstanceSettings.registeringIsOpen",
            "Jobs.abandon",
            "Jobs.file",
            "Jobs.lastDone",
            "Jobs.lastFailed",
            "Jobs.startForAll",
            "Jobs.startUnasked",
            "Jobs.underWay",
            "OwnAccount.signOut",
            "Photographs.find",
            "Photographs.makePublic",
            "Photographs.missing",
            "Photographs.ofSeen",
            "ProviderSignIn.owner",
            "PasswordReset.ask",
            "PasswordReset.byMail",
            "PasswordReset.choose",
            "PasswordReset.holder",
            "PersonOfPages.addInterceptors",
            "PersonOfPages.postHandle",
            "PersonOfPages.preHandle",
            "RecordMetadata.of",
            "Records.backlog",
            "Records.ofKind",
            "Records.ofPlural",
            "Records.services",
            "RefusedForms.handle",
            "Remarks.of",
            "ReviewDesk.entry",
            "Sitemap.index",
            "Sitemap.pages",
            "Sitemap.records");

    @Test
    void withoutAnybodySignedInNothingOpensButWhatIsForEverybody() {
        List<String> open = new ArrayList<>();
        Set<String> seen = new TreeSet<>();
        for (Object service : services().toList()) {
            for (Method method : methods(ClassUtils.getUserClass(service))) {
                String name = ClassUtils.getUserClass(service).getSimpleName() + "." + method.getName();
                seen.add(name);
                if (!OPEN.contains(name)) {
                    String outcome = outcome(service, method);
                    if (!outcome.equals(SignInNeededException.class.getSimpleName())) {
                        open.add(name + " gave " + outcome);
                    }
                }
            }
        }
        assertThat(open).isEmpty();
        assertThat(seen)
                .as("the list of what is open names nothing that is gone")
                .containsAll(OPEN);
        assertThat(seen).contains("AccountService.invite", "Drafts.submit", "Reviews.publish", "AccessTokens.create");
    }

    /** Every bean that asks who is calling, and what hangs on the services of records. */
    private Stream<Object> services() {
        RecordService<?> devices =
                context().getBean(Records.class).ofPlural("devices").orElseThrow();
        Stream<Object> beans = context().getBeansOfType(Object.class).values().stream()
                .filter(bean -> ClassUtils.getUserClass(bean).getName().startsWith("org.vanewright."))
                .filter(bean -> !(bean instanceof Filter) && !(bean instanceof RecordService<?>))
                .filter(bean -> !AnnotatedElementUtils.hasAnnotation(ClassUtils.getUserClass(bean), Controller.class))
                .filter(bean -> asks(ClassUtils.getUserClass(bean)));
        return Stream.concat(beans, Stream.of(devices, devices.drafts(), devices.reviews(), devices.imports()));
    }

    private static boolean asks(Class<?> type) {
        return Arrays.stream(type.getDeclaredFields())
                .map(Field::getType)
                .anyMatch(t -> t == Actors.class || t.getSimpleName().equals("RecordDesk") || t == Records.class);
    }

    private static List<Method> methods(Class<?> type) {
        return Arrays.stream(type.getMethods())
                .filter(method -> method.getDeclaringClass().getName().startsWith("org.vanewright."))
                .filter(method -> !Modifier.isStatic(method.getModifiers()) && !method.isSynthetic())
                .toList();
    }

    private String outcome(Object service, Method method) {
        try {
            method.setAccessible(true);
            Object[] arguments = Arrays.stream(method.getParameterTypes())
                    .map(this::argument)
                    .toArray();
            method.invoke(service, arguments);
            return "an answer";
        } catch (InvocationTargetException e) {
            return e.getTargetException().getClass().getSimpleName();
        } catch (IllegalAccessException e) {
            throw new IllegalStateException(e);
        }
    }

    private @Nullable Object argument(Class<?> type) {
        RevisionRef ref = new RevisionRef(Subjects.demo("devices"), 1);
        RecordService<?> devices =
                context().getBean(Records.class).ofPlural("devices").orElseThrow();
        Revision<?> revision = devices.exactly(ref);
        for (Object value : List.of(
                "devices",
                1,
                true,
                ref,
                revision,
                revision.content(),
                new Units(UnitSystem.METRIC),
                devices,
                Set.of(),
                List.of(),
                Optional.empty(),
                subjects.draft("devices"),
                entry(devices, revision))) {
            if (ClassUtils.isAssignableValue(type, value)) {
                return value;
            }
        }
        return type.isEnum() ? type.getEnumConstants()[0] : null;
    }

    @SuppressWarnings({"unchecked", "rawtypes"}) // both are of the same kind
    private static Records.Entry<?> entry(RecordService service, Revision revision) {
        return new Records.Entry(service, revision);
    }
}
