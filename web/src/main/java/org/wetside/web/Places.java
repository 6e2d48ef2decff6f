package org.wetside.web;

import java.util.List;
import org.wetside.app.Wetside;
import org.wetside.web.bench.BenchRoutes;
import org.wetside.web.bench.RunRinseRoutes;
import org.wetside.web.bench.RunRoutes;
import org.wetside.web.curves.CurveRoutes;
import org.wetside.web.density.DensityApi;
import org.wetside.web.density.InstrumentPages;
import org.wetside.web.density.PatchPages;
import org.wetside.web.density.PictureApi;
import org.wetside.web.density.PictureDesk;
import org.wetside.web.density.TabletPages;
import org.wetside.web.drawer.DrawerRoutes;
import org.wetside.web.drawer.RollPageRoutes;
import org.wetside.web.equipment.EquipmentRoutes;
import org.wetside.web.equipment.MeasureRoutes;
import org.wetside.web.equipment.TankApi;
import org.wetside.web.equipment.TankCheckRoutes;
import org.wetside.web.equipment.ThermometerApi;
import org.wetside.web.equipment.WaterRoutes;
import org.wetside.web.formula.BatchApi;
import org.wetside.web.formula.BatchPages;
import org.wetside.web.formula.FormulaApi;
import org.wetside.web.formula.FormulaPages;
import org.wetside.web.keeping.BackupRoutes;
import org.wetside.web.learning.JudgeRoutes;
import org.wetside.web.learning.LearningApi;
import org.wetside.web.learning.LearningRoutes;
import org.wetside.web.marks.MarksRoutes;
import org.wetside.web.mixing.MixingRoutes;
import org.wetside.web.mixing.TemperLoadRoutes;
import org.wetside.web.negatives.NegativesRoutes;
import org.wetside.web.page.Pages;
import org.wetside.web.page.ThemeRoutes;
import org.wetside.web.page.UnitsRoutes;
import org.wetside.web.plan.LoadApiRoutes;
import org.wetside.web.plan.LoadRinseRoutes;
import org.wetside.web.plan.LoadRoutes;
import org.wetside.web.plan.PlanRoutes;
import org.wetside.web.process.ProcessApiRoutes;
import org.wetside.web.process.ProcessPagesRoutes;
import org.wetside.web.process.RinseRoutes;
import org.wetside.web.rolls.RollsRoutes;
import org.wetside.web.shelf.BottleApi;
import org.wetside.web.shelf.CareRoutes;
import org.wetside.web.shelf.FixerRoutes;
import org.wetside.web.shelf.MixRoutes;
import org.wetside.web.shelf.RecallRoutes;
import org.wetside.web.shelf.ShelfApi;
import org.wetside.web.shelf.ShelfRoutes;
import org.wetside.web.strip.FamilyRoutes;
import org.wetside.web.strip.StripApi;
import org.wetside.web.strip.StripRoutes;
import org.wetside.web.testroll.PiecePages;
import org.wetside.web.testroll.TestRollApi;
import org.wetside.web.testroll.TestRollPages;
import org.wetside.web.times.TimesPageRoutes;
import org.wetside.web.times.TimesRoutes;
import org.wetside.web.track.TrackRoutes;
import org.wetside.web.trial.TestApi;
import org.wetside.web.trial.TestRoutes;
import org.wetside.web.voice.VoiceRoutes;
import org.wetside.web.wash.WashRoutes;
import org.wetside.web.waste.WasteApi;
import org.wetside.web.waste.WastePages;
import org.wetside.web.waste.WastePapers;

/** Every place with its routes, one line each, in the order of the evening. */
final class Places {
  private Places() {}

  /** The routes of all places over one open home. */
  static List<Routes> of(Wetside wetside, Pages pages) {
    return List.of(
        new ThemeRoutes(pages),
        new UnitsRoutes(pages),
        new MarksRoutes(pages),
        new PlanRoutes(wetside, pages),
        new LoadRoutes(wetside, pages),
        new LoadApiRoutes(wetside),
        new LoadRinseRoutes(wetside, pages),
        new MixRoutes(wetside, pages),
        new TemperLoadRoutes(wetside, pages),
        new BatchPages(wetside, pages),
        new FormulaPages(wetside, pages),
        new FormulaApi(wetside),
        new BatchApi(wetside),
        new WashRoutes(wetside, pages),
        new WasteApi(wetside),
        new WastePages(wetside, pages),
        new WastePapers(wetside),
        new RecallRoutes(wetside, pages),
        new FixerRoutes(wetside, pages),
        new CareRoutes(wetside, pages),
        new ShelfRoutes(wetside, pages),
        new BottleApi(wetside),
        new ShelfApi(wetside),
        new EquipmentRoutes(wetside, pages),
        new TankCheckRoutes(wetside, pages),
        new BackupRoutes(wetside, pages),
        new WaterRoutes(wetside, pages),
        new MeasureRoutes(wetside, pages),
        new ProcessApiRoutes(wetside),
        new RinseRoutes(wetside, pages),
        new ProcessPagesRoutes(wetside, pages),
        new TankApi(wetside),
        new ThermometerApi(wetside),
        new TestRoutes(wetside, pages),
        new TestApi(wetside),
        new BenchRoutes(wetside, pages),
        new RunRoutes(wetside),
        new RunRinseRoutes(wetside),
        new VoiceRoutes(),
        new TrackRoutes(wetside),
        new MixingRoutes(wetside),
        new CurveRoutes(),
        new TimesRoutes(wetside),
        new TimesPageRoutes(wetside, pages),
        new InstrumentPages(wetside, pages),
        new TabletPages(wetside, pages),
        new PatchPages(wetside, pages),
        new PictureDesk(wetside, pages),
        new DensityApi(wetside),
        new PictureApi(wetside),
        new DrawerRoutes(wetside, pages),
        new RollPageRoutes(wetside, pages),
        new RollsRoutes(wetside),
        new NegativesRoutes(wetside, pages),
        new JudgeRoutes(wetside, pages),
        new LearningRoutes(wetside, pages),
        new LearningApi(wetside),
        new TestRollPages(wetside, pages),
        new PiecePages(wetside, pages),
        new TestRollApi(wetside),
        new StripApi(wetside),
        new FamilyRoutes(wetside, pages),
        // the last one under /curves: it takes any word there for the number of a curve
        new StripRoutes(wetside, pages));
  }
}
