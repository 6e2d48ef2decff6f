package org.wetside.cli;

import java.util.List;
import java.util.concurrent.Callable;

/**
 * The commands there are. Only the one that is asked for is built: a command line of fifteen
 * commands starts as fast as one of one.
 */
final class Commands {
  /** In the order in which help lists them. Every name needs its line in {@link #create}. */
  static final List<String> NAMES =
      List.of(
          "serve",
          "demo",
          "rolls",
          "loads",
          "bottles",
          "waste",
          "recall",
          "fixers",
          "care",
          "test",
          "tanks",
          "thermometers",
          "waters",
          "measures",
          "instruments",
          "tablets",
          "calibrate",
          "patches",
          "screens",
          "processes",
          "time",
          "times",
          "judge",
          "learned",
          "mix",
          "formula",
          "formulas",
          "batches",
          "temper",
          "wash",
          "drift",
          "curve",
          "curves",
          "contrast",
          "testroll",
          "cues",
          "sheet",
          "label",
          "backup",
          "restore",
          "check",
          "completion",
          "version");

  private Commands() {}

  /** A fresh command object for picocli. */
  static Callable<Integer> create(String name) {
    return switch (name) {
      case "demo" -> new DemoCommand();
      case "rolls" -> new RollsCommand();
      case "loads" -> new LoadsCommand();
      case "screens" -> new ScreensCommand();
      case "cues" -> new CuesCommand();
      case "sheet" -> new SheetCommand();
      case "label" -> new LabelCommand();
      case "backup" -> new BackupCommand();
      case "restore" -> new RestoreCommand();
      case "check" -> new CheckCommand();
      case "processes" -> new ProcessesCommand();
      case "waste" -> new WasteCommand();
      case "bottles" -> new BottlesCommand();
      case "recall" -> new RecallCommand();
      case "fixers" -> new FixersCommand();
      case "care" -> new CareCommand();
      case "test" -> new TestCommand();
      case "tanks" -> new TanksCommand();
      case "waters" -> new WatersCommand();
      case "measures" -> new MeasuresCommand();
      case "instruments" -> new InstrumentsCommand();
      case "tablets" -> new TabletsCommand();
      case "calibrate" -> new CalibrateCommand();
      case "patches" -> new PatchesCommand();
      case "thermometers" -> new ThermometersCommand();
      case "completion" -> new CompletionCommand();
      case "time" -> new TimeCommand();
      case "times" -> new TimesCommand();
      case "judge" -> new JudgeCommand();
      case "learned" -> new LearnedCommand();
      case "mix" -> new MixCommand();
      case "formula" -> new FormulaCommand();
      case "batches" -> new BatchesCommand();
      case "formulas" -> new FormulasCommand();
      case "temper" -> new TemperCommand();
      case "wash" -> new WashCommand();
      case "drift" -> new DriftCommand();
      case "curve" -> new CurveCommand();
      case "curves" -> new CurvesCommand();
      case "contrast" -> new ContrastCommand();
      case "testroll" -> new TestrollCommand();
      case "serve" -> new ServeCommand();
      case "version" -> new VersionCommand();
      default -> throw new IllegalArgumentException("no such command: " + name);
    };
  }
}
