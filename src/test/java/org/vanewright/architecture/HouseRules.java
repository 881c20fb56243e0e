package org.vanewright.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleNameEndingWith;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.NullMarked;
import org.springframework.stereotype.Controller;

/**
 * The rules, for any root package, so that each can be tried on classes that break it.
 *
 * @param root of the packages, such as {@code org.vanewright}
 */
record HouseRules(String root) {
    /** Packages that are no features. */
    private static final Set<String> SHARED = Set.of("engineering", "audit", "record", "platform");

    /** The core computes: it needs nothing but the JDK, numerics and documents. */
    ArchRule engineeringIsPure() {
        String[] allowed = {
            root + ".engineering..",
            "java.io..",
            "java.lang..",
            "java.math..",
            "java.nio..",
            "java.security..",
            "java.text..",
            "java.time..",
            "java.util..",
            "java.awt.geom..",
            "javax.xml..",
            "org.w3c.dom..",
            "org.jspecify..",
            "org.apache.commons.numbers..",
            "org.hipparchus..",
            "org.locationtech.jts..",
            "org.apache.commons.csv..",
            "org.apache.pdfbox..",
            "org.apache.fontbox..",
        };
        // An array of primitives has no package of its own.
        return classes()
                .that()
                .resideInAPackage(root + ".engineering..")
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(allowed).or(primitive()));
    }

    private static DescribedPredicate<JavaClass> primitive() {
        return DescribedPredicate.describe(
                "are primitive", type -> type.getBaseComponentType().isPrimitive());
    }

    /** A feature's own package is what others may use of it, without its controllers and repositories. */
    ArchRule featuresMeetInTheirBasePackages() {
        return classes().should(new ArchCondition<>("reach another feature only through its service and records") {
            @Override
            public void check(JavaClass origin, ConditionEvents events) {
                for (Dependency dependency : origin.getDirectDependenciesFromSelf()) {
                    JavaClass target = dependency.getTargetClass().getBaseComponentType();
                    Optional<String> feature = feature(target);
                    if (feature.isPresent() && !feature.equals(feature(origin)) && isInside(target, feature.get())) {
                        events.add(SimpleConditionEvent.violated(origin, dependency.getDescription()));
                    }
                }
            }
        });
    }

    private Optional<String> feature(JavaClass type) {
        String name = type.getPackageName();
        if (!name.startsWith(root + ".")) {
            return Optional.empty();
        }
        String first = name.substring(root.length() + 1).split("\\.", 2)[0];
        return SHARED.contains(first) ? Optional.empty() : Optional.of(first);
    }

    private boolean isInside(JavaClass type, String feature) {
        boolean base = type.getPackageName().equals(root + "." + feature);
        return !base || type.getSimpleName().endsWith("Repository") || type.isMetaAnnotatedWith(Controller.class);
    }

    /** What all features stand on knows none of them. */
    ArchRule sharedPackagesKnowNoFeature() {
        return noClasses()
                .that()
                .resideInAnyPackage(
                        SHARED.stream().map(name -> root + "." + name + "..").toArray(String[]::new))
                .should()
                .dependOnClassesThat(DescribedPredicate.describe(
                        "belong to a feature",
                        type -> feature(type.getBaseComponentType()).isPresent()));
    }

    /** SQL is written in repositories. */
    ArchRule onlyRepositoriesUseSql() {
        DescribedPredicate<JavaClass> sql = resideInAnyPackage(
                "org.springframework.jdbc..", "java.sql..", "javax.sql..", "org.h2..", "org.postgresql..");
        return noClasses()
                .that(DescribedPredicate.not(partOfARepository()))
                .should()
                .dependOnClassesThat(sql);
    }

    private static DescribedPredicate<JavaClass> partOfARepository() {
        return DescribedPredicate.describe(
                "are part of a repository",
                type -> outermost(type).getSimpleName().contains("Repository"));
    }

    private static JavaClass outermost(JavaClass type) {
        JavaClass outer = type;
        while (outer.getEnclosingClass().isPresent()) {
            outer = outer.getEnclosingClass().get();
        }
        return outer;
    }

    /** Controllers bind, call a service and show; they reach no table. */
    ArchRule controllersReachNoRepository() {
        return noClasses()
                .that()
                .areMetaAnnotatedWith(Controller.class)
                .should()
                .dependOnClassesThat(simpleNameEndingWith("Repository"));
    }

    ArchRule featuresHaveNoCycles() {
        return slices().matching(root + ".(*)..").should().beFreeOfCycles();
    }

    ArchRule engineeringHasNoCycles() {
        return slices().matching(root + ".engineering.(*)..").should().beFreeOfCycles();
    }

    /** Absent values are told apart everywhere, so that the compiler checks them. */
    ArchRule packagesAreNullMarked() {
        return classes().should(new ArchCondition<>("be in a package marked with @NullMarked") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                if (!type.getPackage().isAnnotatedWith(NullMarked.class)) {
                    events.add(SimpleConditionEvent.violated(type, type.getName() + " is in an unmarked package"));
                }
            }
        });
    }
}
