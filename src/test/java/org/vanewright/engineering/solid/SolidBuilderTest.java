package org.vanewright.engineering.solid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.input.FieldProblem;

/** Every solid closes, whatever the options; the criteria are those of any closed orientable surface (Euler). */
class SolidBuilderTest {
    private static final int DESIGNS = 200;
    private static final int EXTREMES = 4000;

    @Test
    void everyRandomDesignGivesOneClosedOrientedShell() {
        List<DeviceDesign> designs = new RandomDesigns(20_240_917).valid(DESIGNS);
        for (DeviceDesign design : designs) {
            MeshCheck check = MeshCheck.of(SolidBuilder.build(design));
            assertThat(check.isSound()).as("%s: %s", design, check).isTrue();
            assertThat(check.shellEulerCharacteristics()).as("%s", design).containsExactly(2);
        }
    }

    @Test
    void extremeDesignsAreRefusedOrSound() {
        RandomDesigns random = new RandomDesigns(4);
        int sound = 0;
        for (int i = 0; i < EXTREMES; i++) {
            DeviceDesign design = random.extreme();
            List<FieldProblem> problems = DesignRules.check(design);
            if (problems.isEmpty()) {
                MeshCheck check = MeshCheck.of(SolidBuilder.build(design));
                assertThat(check.isSound()).as("%s: %s", design, check).isTrue();
                sound++;
            } else {
                assertThat(problems)
                        .allMatch(p -> !p.field().isEmpty() && !p.allowed().isEmpty());
            }
        }
        assertThat(sound).as("designs that were built").isGreaterThan(20);
    }

    @Test
    void noTwoFacesOfARandomDesignCross() {
        List<DeviceDesign> designs = new RandomDesigns(7).valid(20);
        for (DeviceDesign design : designs) {
            Mesh mesh = SolidBuilder.build(design);
            assertThat(Crossings.first(mesh)).as("%s", design).isEmpty();
        }
    }

    @Test
    void theCrossingTestItselfSeesACrossing() {
        Mesh crossed = new Mesh(
                new double[] {0, 0, 0, 4, 0, 0, 0, 4, 0, 1, 1, -1, 1, 1, 1, 2, 1, 1}, new int[] {0, 1, 2, 3, 4, 5});
        assertThat(Crossings.first(crossed)).isPresent();
    }
}
