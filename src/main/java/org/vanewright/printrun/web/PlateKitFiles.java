package org.vanewright.printrun.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.springframework.stereotype.Component;
import org.vanewright.device.DeviceSolids;
import org.vanewright.engineering.solid.BuildPlate;
import org.vanewright.engineering.solid.Mesh;
import org.vanewright.engineering.solid.Plate;
import org.vanewright.engineering.solid.StlWriter;
import org.vanewright.engineering.solid.ThreeMfWriter;
import org.vanewright.kit.KitFile;
import org.vanewright.kit.KitFiles;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.platform.form.Form;
import org.vanewright.printrun.PrintPlan;
import org.vanewright.printrun.PrintPlanQuery;
import org.vanewright.printrun.PrintPlanner;
import org.vanewright.record.Revision;

/**
 * What has to be printed for a layout, as files of its kit: each piece with its base shaped for the skin under its row,
 * and plates with as many as are fitted and two to spare, on the bed that the print plan takes as usual.
 */
@Component
class PlateKitFiles implements KitFiles<LayoutDocument> {
    private final PrintPlanner planner;
    private final DeviceSolids solids;

    PlateKitFiles(PrintPlanner planner, DeviceSolids solids) {
        this.planner = planner;
        this.solids = solids;
    }

    @Override
    public String kind() {
        return "layout";
    }

    @Override
    public List<KitFile> of(Revision<LayoutDocument> layout) {
        PrintPlanQuery query =
                Objects.requireNonNull(PrintPlanForm.of(Form.posted(Map.of("shaped", new String[] {"true"})))
                        .query());
        List<KitFile> files = new ArrayList<>();
        int number = 1;
        for (PrintPlan.Batch batch : planner.plan(layout.content(), query).batches()) {
            add(batch, "piece-" + number++, query.bed(), files);
        }
        return files;
    }

    private void add(PrintPlan.Batch batch, String name, PrintPlanQuery.Bed bed, List<KitFile> files) {
        String what = batch.device().slug() + " for row " + String.join(", ", batch.rows());
        files.add(new KitFile(
                name + ".stl",
                "model/stl",
                what,
                () -> StlWriter.write(mesh(batch), DeviceSolids.label(batch.device()))));
        files.add(new KitFile(
                name + ".3mf",
                ThreeMfWriter.MEDIA_TYPE,
                what,
                () -> ThreeMfWriter.write(mesh(batch), DeviceSolids.label(batch.device()))));
        int plates = batch.piecesPerPlate().size();
        for (int i = 0; i < plates; i++) {
            int index = i;
            files.add(new KitFile(
                    name + "-plate-" + (i + 1) + "-of-" + plates + ".3mf",
                    ThreeMfWriter.MEDIA_TYPE,
                    batch.piecesPerPlate().get(i) + " pieces, " + what,
                    () -> plate(batch, bed, index)));
        }
    }

    private byte[] plate(PrintPlan.Batch batch, PrintPlanQuery.Bed bed, int index) {
        Mesh mesh = mesh(batch);
        List<Plate> plates = BuildPlate.arrange(mesh, bed.widthMm(), bed.depthMm(), batch.pieces(), bed.spacingMm());
        return ThreeMfWriter.write(mesh, DeviceSolids.label(batch.device()), plates.get(index));
    }

    private Mesh mesh(PrintPlan.Batch batch) {
        return solids.exact(DeviceSolids.on(batch.device().content().design(), batch.undersideRadiusMm()));
    }
}
