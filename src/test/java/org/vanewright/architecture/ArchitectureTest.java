package org.vanewright.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** The service keeps the rules, and each rule notices when it is broken. */
class ArchitectureTest {
    private static final JavaClasses SERVICE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.vanewright");

    private static final JavaClasses PLANTED = new ClassFileImporter().importPackages("planted");

    /**
     * @param broken parts of what the rule must say about the planted classes, one for each violation
     */
    private record Case(String name, Function<HouseRules, ArchRule> rule, List<String> broken) {}

    private static final List<Case> CASES = List.of(
            new Case(
                    "engineering is pure",
                    HouseRules::engineeringIsPure,
                    List.of("planted.engineering.air.SpringUser", "planted.engineering.air.FeatureUser")),
            new Case(
                    "features meet in their base packages",
                    HouseRules::featuresMeetInTheirBasePackages,
                    List.of("planted.string.Borrower", "planted.string.web.Guest")),
            new Case(
                    "shared packages know no feature",
                    HouseRules::sharedPackagesKnowNoFeature,
                    List.of("planted.record.FeatureUser", "planted.engineering.air.FeatureUser")),
            new Case(
                    "only repositories use SQL",
                    HouseRules::onlyRepositoriesUseSql,
                    List.of("planted.kite.KiteService")),
            new Case(
                    "controllers reach no repository",
                    HouseRules::controllersReachNoRepository,
                    List.of("planted.kite.web.KiteController")),
            new Case(
                    "features have no cycles", HouseRules::featuresHaveNoCycles, List.of("Slice kite", "Slice string")),
            new Case(
                    "engineering has no cycles",
                    HouseRules::engineeringHasNoCycles,
                    List.of("Slice air", "Slice flow")),
            new Case(
                    "packages are null-marked",
                    HouseRules::packagesAreNullMarked,
                    List.of("planted.platform.Unmarked is in")));

    @TestFactory
    List<DynamicTest> theServiceKeepsEachRule() {
        HouseRules rules = new HouseRules("org.vanewright");
        assertThat(SERVICE).hasSizeGreaterThan(50);
        return CASES.stream()
                .map(c -> DynamicTest.dynamicTest(
                        c.name(), () -> c.rule().apply(rules).check(SERVICE)))
                .toList();
    }

    @TestFactory
    List<DynamicTest> eachRuleNoticesWhatBreaksItAndNothingElse() {
        HouseRules rules = new HouseRules("planted");
        return CASES.stream()
                .map(c -> DynamicTest.dynamicTest(c.name(), () -> {
                    List<String> details = c.rule()
                            .apply(rules)
                            .evaluate(PLANTED)
                            .getFailureReport()
                            .getDetails();
                    assertThat(details)
                            .isNotEmpty()
                            .allSatisfy(detail -> assertThat(c.broken()).anyMatch(detail::contains));
                    assertThat(c.broken())
                            .allSatisfy(part -> assertThat(details).anyMatch(detail -> detail.contains(part)));
                }))
                .toList();
    }
}
