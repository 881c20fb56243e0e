package org.vanewright.benchmark;

import java.util.Random;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.vanewright.engineering.flow.FlowCondition;
import org.vanewright.engineering.flow.FlowResult;
import org.vanewright.engineering.flow.LayerPass;
import org.vanewright.engineering.flow.Polar;
import org.vanewright.engineering.flow.SectionFlow;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.Sections;

/**
 * The flow over a section at 200 panels with boundary layers, from panels to drag; the same with the panels' factors at
 * hand; a sweep of 21 angles; one pass of both layers; and the library's factorisation and solution of 200 dense equations
 * beside them. One angle is to take at most three times the library's time, the sweep at most 1.5 times that of one angle
 * and 21 passes.
 */
@State(Scope.Benchmark)
public class FlowBenchmark {
    private static final int SIZE = 200;
    private static final double ANGLE = Math.toRadians(4);

    private final Section section = Sections.naca("2412");
    private final FlowCondition condition = FlowCondition.free(3e6);
    private final SectionFlow ready = SectionFlow.of(section, SIZE);
    private final LayerPass pass = new LayerPass(section, SIZE, ANGLE, condition);
    private final RealMatrix matrix = matrix();
    private final RealVector right = new ArrayRealVector(SIZE, 1.0);

    private static RealMatrix matrix() {
        Random chance = new Random(200);
        RealMatrix matrix = MatrixUtils.createRealMatrix(SIZE, SIZE);
        for (int i = 0; i < SIZE; i++) {
            for (int j = 0; j < SIZE; j++) {
                matrix.setEntry(i, j, chance.nextGaussian());
            }
        }
        return matrix;
    }

    @Benchmark
    public RealVector libraryFactorsAndSolves200() {
        return new LUDecomposition(matrix).getSolver().solve(right);
    }

    @Benchmark
    public FlowResult oneAngle() {
        return SectionFlow.of(section, SIZE).at(ANGLE, condition);
    }

    @Benchmark
    public SectionFlow panelsAndFactorsAlone() {
        return SectionFlow.of(section, SIZE);
    }

    @Benchmark
    public FlowResult layersAndCouplingAlone() {
        return ready.at(ANGLE, condition);
    }

    @Benchmark
    public double[] onePassOfBothLayers() {
        return pass.follow();
    }

    @Benchmark
    public Polar polarOf21Angles() {
        return Polar.sweep(SectionFlow.of(section, SIZE), condition, -4, 12, 21);
    }
}
