package org.vanewright.engineering.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Makes the solid of a device design: one closed mesh, in the frame of {@link DeviceDesign}.
 *
 * <p>The surface is laid out face by face over shared vertices, never cut or united: the base's underside, wall, bevel
 * and upper face; the vane's sides as bands between level sections, the lowest of which is a hole in the upper face.
 * Plane faces with holes are triangulated over their own corners only.
 */
public final class SolidBuilder {
    private final Dimensions d;
    private final BaseShape base;
    private final VaneShape vane;
    private final MeshBuilder mesh = new MeshBuilder();

    private SolidBuilder(Dimensions d) {
        this.d = d;
        base = new BaseShape(d);
        vane = new VaneShape(d);
    }

    /**
     * @param design with or without its optional values
     * @return a closed, consistently oriented mesh in mm
     * @throws InvalidInputException for a design that {@link DesignRules#check} refuses
     */
    public static Mesh build(DeviceDesign design) {
        Mesh mesh = new SolidBuilder(DesignRules.dimensions(design)).build();
        MeshCheck check = MeshCheck.of(mesh);
        if (!check.isSound() || check.shellEulerCharacteristics().size() != 1) {
            throw new InvalidInputException(new FieldProblem(
                    "design", check.toString(), "dimensions whose surface closes; report this combination"));
        }
        return mesh;
    }

    private Mesh build() {
        double upperZ = base.upperZ();
        List<Point2> outline = base.outline().points();
        int[] bottom = mesh.ring(outline, p -> base.undersideZ(p.x()));
        int[] wall = mesh.ring(outline, p -> upperZ - d.bevel());
        int[] rim = d.bevel() == 0 ? wall : mesh.ring(base.upper(), p -> upperZ);
        int rear = d.flush() ? base.outline().rearEdge() : MeshBuilder.NO_EDGE;
        underside(bottom);
        mesh.band(bottom, wall, rear);
        if (d.bevel() > 0) {
            mesh.band(wall, rim, rear);
        }
        List<int[][]> columns = columns(upperZ);
        List<int[]> holes = new ArrayList<>();
        int[] outer = rim;
        if (d.flush()) {
            outer = notched(rim, rear, columns.get(0)[0]);
            rearFace(List.of(bottom, wall, rim), rear, columns.get(0));
        } else {
            columns.forEach(c -> holes.add(c[0]));
        }
        if (d.indexMark()) {
            holes.add(indexMark(upperZ));
        }
        mesh.upwardFace(outer, holes);
        return mesh.build();
    }

    /** Level strips across the base between corners that face each other. */
    private void underside(int[] bottom) {
        List<Integer> sources = base.outline().sources();
        int last = sources.stream().mapToInt(Integer::intValue).max().orElseThrow();
        int[] left = new int[last + 1];
        int[] right = new int[last + 1];
        for (int i = 0; i < bottom.length; i++) {
            int s = sources.get(i);
            right[s] = bottom[i];
            left[s] = i <= last ? bottom[i] : left[s];
        }
        for (int s = 0; s < last; s++) {
            if (left[s + 1] != right[s + 1]) {
                mesh.triangle(left[s], right[s + 1], left[s + 1]);
            }
            if (left[s] != right[s]) {
                mesh.triangle(left[s], right[s], right[s + 1]);
            }
        }
    }

    /** The vertices of each vane, level by level; makes its sides and its tip. */
    private List<int[][]> columns(double upperZ) {
        List<Double> levels = vane.levels();
        VanePlaces places = new VanePlaces(d);
        List<List<int[]>> columns = new ArrayList<>();
        for (double z : levels) {
            List<List<Point2>> placed = places.place(vane.at(z));
            for (int which = 0; which < placed.size(); which++) {
                if (columns.size() <= which) {
                    columns.add(new ArrayList<>());
                }
                columns.get(which).add(mesh.ring(placed.get(which), p -> upperZ + z));
            }
        }
        int leftOut = d.flush() ? vane.rearEdge() : MeshBuilder.NO_EDGE;
        for (List<int[]> column : columns) {
            for (int i = 1; i < column.size(); i++) {
                mesh.band(column.get(i - 1), column.get(i), leftOut);
            }
            mesh.upwardFace(column.get(column.size() - 1), List.of());
        }
        return columns.stream().map(c -> c.toArray(int[][]::new)).toList();
    }

    /** The rim of the upper face, its rear edge led round the foot of a vane that reaches it. */
    private int[] notched(int[] rim, int rear, int[] foot) {
        int n = foot.length;
        int[] backwards = IntStream.range(0, n)
                .map(i -> foot[(vane.rearEdge() - i + n) % n])
                .toArray();
        return MeshBuilder.join(List.of(
                Arrays.copyOfRange(rim, 0, rear + 1), backwards, Arrays.copyOfRange(rim, rear + 1, rim.length)));
    }

    /** The plane on which base and vane end together: an inverted T, fillets in its corners. */
    private void rearFace(List<int[]> baseRings, int rear, int[][] column) {
        List<int[]> rings = new ArrayList<>(baseRings.stream().distinct().toList());
        List<Integer> right = new ArrayList<>();
        List<Integer> left = new ArrayList<>();
        for (int[] ring : rings) {
            left.add(ring[rear]);
            right.add(ring[(rear + 1) % ring.length]);
        }
        for (int[] ring : column) {
            left.add(ring[vane.rearEdge()]);
            right.add(ring[(vane.rearEdge() + 1) % ring.length]);
        }
        IntStream up = right.stream().mapToInt(Integer::intValue);
        IntStream down = IntStream.range(0, left.size()).map(i -> left.get(left.size() - 1 - i));
        mesh.rearwardFace(IntStream.concat(up, down).toArray());
    }

    private int[] indexMark(double upperZ) {
        IndexMark mark = IndexMark.fitting(d, new Footprints(d, base, vane)).orElseThrow();
        int[] foot = mesh.ring(mark.foot(), p -> upperZ);
        int[] top = mesh.ring(mark.top(), p -> upperZ + IndexMark.HEIGHT_MM);
        mesh.band(foot, top, MeshBuilder.NO_EDGE);
        mesh.upwardFace(top, List.of());
        return foot;
    }
}
