package org.wetside.app;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.authority.KeepAuthority;
import org.wetside.app.bench.Alarm;
import org.wetside.app.bench.AskDilutions;
import org.wetside.app.bench.Bench;
import org.wetside.app.bench.CheckLoad;
import org.wetside.app.bench.ForeseeRun;
import org.wetside.app.bench.RinseRun;
import org.wetside.app.bench.StartRun;
import org.wetside.app.bench.ThreadAlarm;
import org.wetside.app.care.CareForSteps;
import org.wetside.app.curves.Sensitometry;
import org.wetside.app.density.Densitometry;
import org.wetside.app.drawer.AddRolls;
import org.wetside.app.drawer.ChangeRoll;
import org.wetside.app.drawer.FileRoll;
import org.wetside.app.drawer.FindRolls;
import org.wetside.app.drawer.ReadRecord;
import org.wetside.app.drawer.WithdrawRoll;
import org.wetside.app.equipment.KeepMeasures;
import org.wetside.app.equipment.KeepTankChecks;
import org.wetside.app.equipment.KeepTanks;
import org.wetside.app.equipment.KeepThermometers;
import org.wetside.app.equipment.KeepWaters;
import org.wetside.app.formula.AtHand;
import org.wetside.app.formula.FormulaBook;
import org.wetside.app.formula.KeepFormula;
import org.wetside.app.formula.MixBatch;
import org.wetside.app.formula.WeighOut;
import org.wetside.app.home.Home;
import org.wetside.app.home.HomeLock;
import org.wetside.app.keeping.CheckData;
import org.wetside.app.keeping.DailyBackup;
import org.wetside.app.keeping.Findings;
import org.wetside.app.keeping.KeptBackups;
import org.wetside.app.keeping.MakeBackup;
import org.wetside.app.learning.Learning;
import org.wetside.app.mixing.TemperLoad;
import org.wetside.app.plan.CheckStock;
import org.wetside.app.plan.KeepTonight;
import org.wetside.app.plan.ListLoads;
import org.wetside.app.plan.MakeLoad;
import org.wetside.app.process.AddRinse;
import org.wetside.app.process.CheckOrder;
import org.wetside.app.process.FindProcess;
import org.wetside.app.process.KeepProcess;
import org.wetside.app.process.RemoveProcess;
import org.wetside.app.process.ShowCues;
import org.wetside.app.screens.FindScreens;
import org.wetside.app.screens.Invitations;
import org.wetside.app.screens.PairScreen;
import org.wetside.app.screens.RemoveScreen;
import org.wetside.app.shelf.AddBottle;
import org.wetside.app.shelf.CareForBath;
import org.wetside.app.shelf.ChangeBottle;
import org.wetside.app.shelf.JudgeBottles;
import org.wetside.app.shelf.KeepMinimum;
import org.wetside.app.shelf.ListBottles;
import org.wetside.app.shelf.ReadRecall;
import org.wetside.app.shelf.TurnFixers;
import org.wetside.app.sound.MakeTrack;
import org.wetside.app.times.AddTime;
import org.wetside.app.times.AskRate;
import org.wetside.app.times.AskTime;
import org.wetside.app.times.ExportTimes;
import org.wetside.app.times.FindFilm;
import org.wetside.app.times.ImportTimes;
import org.wetside.app.times.ListTimes;
import org.wetside.app.times.TypeLeaflet;
import org.wetside.app.times.WithdrawTime;
import org.wetside.app.trial.BathTests;
import org.wetside.app.waste.WasteBook;
import org.wetside.core.chemistry.OwnFormula;
import org.wetside.store.Database;
import org.wetside.store.OwnFormulas;

/**
 * Front door of the program: one home of data and everything that can be done with it. Use cases
 * are made when asked for and the database is opened when the first of them needs it, so that
 * opening costs almost nothing.
 */
public final class Wetside implements AutoCloseable {
  private final Home home;
  private final Clock clock;
  private final @Nullable HomeLock lock;
  private final HomeData data;
  private final Invitations invitations = new Invitations();
  private @Nullable Bench bench;
  private @Nullable DailyBackup dailyBackup;

  private Wetside(Home home, Clock clock, @Nullable HomeLock lock) {
    this.home = home;
    this.clock = clock;
    this.lock = lock;
    data = new HomeData(home, clock, lock != null);
  }

  /**
   * Opens a home to read and write.
   *
   * @param clock the wall clock that every use case is given
   * @throws org.wetside.app.home.HomeInUseException when another process writes in it
   */
  public static Wetside open(Path home, Clock clock) {
    Home folder = new Home(home);
    return new Wetside(folder, clock, HomeLock.take(folder, clock.instant()));
  }

  /**
   * Opens a home only to read, beside whoever writes in it. A home without data reads as empty and
   * leaves no trace.
   */
  public static Wetside openToRead(Path home, Clock clock) {
    return new Wetside(new Home(home), clock, null);
  }

  /** The folder. */
  public Home home() {
    return home;
  }

  /** The wall clock. */
  public Clock clock() {
    return clock;
  }

  /** Tells whoever finds the home in use where its server listens. */
  public void servingAt(String address) {
    if (lock != null) {
      lock.servingAt(address);
    }
  }

  /** Puts rolls into the drawer. */
  public AddRolls addRolls() {
    return new AddRolls(this::database, clock, findFilm());
  }

  /** Corrects what is said of a roll. */
  public ChangeRoll changeRoll() {
    return new ChangeRoll(this::database, clock, findFilm());
  }

  /** Takes a roll out of the drawer. */
  public WithdrawRoll withdrawRoll() {
    return new WithdrawRoll(this::database);
  }

  /** Files negatives. */
  public FileRoll fileRoll() {
    return new FileRoll(this::database);
  }

  /** Finds rolls by state and by any word written of them. */
  public FindRolls findRolls() {
    return new FindRolls(this::database);
  }

  /** Everything that was done to a roll. */
  public ReadRecord readRecord() {
    return new ReadRecord(this::database);
  }

  /** From a typed name to a film of the catalogue. */
  public FindFilm findFilm() {
    return new FindFilm(this::database);
  }

  /** What stands on the shelf. */
  public ListBottles listBottles() {
    return new ListBottles(database());
  }

  /** Puts bottles on the shelf. */
  public AddBottle addBottle() {
    return new AddBottle(database(), clock);
  }

  /** Opens, takes from, tops up, corrects and discards bottles. */
  public ChangeBottle changeBottle() {
    return new ChangeBottle(database(), clock);
  }

  /** Timed tests of baths and of washed film. */
  public BathTests bathTests() {
    return new BathTests(this::database, clock);
  }

  /** The book of waste. */
  public WasteBook wasteBook() {
    return new WasteBook(this::database, clock);
  }

  /** Whether to use each bottle, why, and what it can still do. */
  public JudgeBottles judgeBottles() {
    return new JudgeBottles(database(), clock);
  }

  /** The rolls that are to be fixed again. */
  public ReadRecall readRecall() {
    return new ReadRecall(database(), clock);
  }

  /** Replenishing, and times for developers that are used again. */
  public CareForBath careForBath() {
    return new CareForBath(database());
  }

  /** Two fixers used after each other. */
  public TurnFixers turnFixers() {
    return new TurnFixers(database(), clock);
  }

  /** The makers' minima of stock per roll. */
  public KeepMinimum keepMinimum() {
    return new KeepMinimum(database());
  }

  /** The formulas there are, on file and the user's own. */
  public FormulaBook formulaBook() {
    return new FormulaBook(() -> database().<List<OwnFormula>>read(s -> new OwnFormulas(s).all()));
  }

  /** Weighs formulas out. */
  public WeighOut weighOut() {
    return new WeighOut(formulaBook(), () -> AtHand.of(keepMeasures()));
  }

  /** Keeps formulas of the user's own. */
  public KeepFormula keepFormula() {
    return new KeepFormula(this::database, clock, formulaBook());
  }

  /** Mixes batches. */
  public MixBatch mixBatch() {
    return new MixBatch(this::database, clock, weighOut());
  }

  /** The tanks. */
  public KeepTanks keepTanks() {
    return new KeepTanks(database());
  }

  /** The thermometers. */
  public KeepThermometers keepThermometers() {
    return new KeepThermometers(database());
  }

  /** The waters of the house. */
  public KeepWaters keepWaters() {
    return new KeepWaters(this::database);
  }

  /** The balance, the syringes and graduates. */
  public KeepMeasures keepMeasures() {
    return new KeepMeasures(this::database);
  }

  /** Brings the baths of a load to their temperatures. */
  public TemperLoad temperLoad() {
    return new TemperLoad(this::database, clock);
  }

  /** Instruments that read density, their tablets, and pictures to be measured. */
  public Densitometry densitometry() {
    return new Densitometry(home, this::database, clock);
  }

  /** Finds a development time to believe. */
  public AskTime askTime() {
    return new AskTime(this::database);
  }

  /** Finds how fast a developer works at other temperatures. */
  public AskRate askRate() {
    return new AskRate(this::database);
  }

  /** Keeps one line from a leaflet. */
  public AddTime addTime() {
    return new AddTime(this::database, clock);
  }

  /** Measured film and development. */
  public Sensitometry sensitometry() {
    return new Sensitometry(this::database, clock, addTime());
  }

  /** Keeps a printed table of times. */
  public TypeLeaflet typeLeaflet() {
    return new TypeLeaflet(this::database, clock);
  }

  /** Takes in a file of times. */
  public ImportTimes importTimes() {
    return new ImportTimes(this::database, clock);
  }

  /** Gives the user's own times out as a file. */
  public ExportTimes exportTimes() {
    return new ExportTimes(this::database);
  }

  /** Lists the user's own times. */
  public ListTimes listTimes() {
    return new ListTimes(this::database);
  }

  /** Takes one of the user's own times out of use. */
  public WithdrawTime withdrawTime() {
    return new WithdrawTime(this::database, clock);
  }

  /** Learns from negatives. */
  public Learning learning() {
    return new Learning(this::database, clock, readRecord());
  }

  /** The conductor of this home's runs; there is one. */
  public synchronized Bench bench() {
    Bench conductor = bench;
    if (conductor == null) {
      conductor = new Bench(this::database, clock, new ThreadAlarm(clock));
      bench = conductor;
    }
    return conductor;
  }

  /** The conductor woken by another alarm: for whoever holds the clock in hand. */
  public synchronized Bench benchWith(Alarm alarm) {
    if (bench != null) {
      throw new IllegalStateException("the Bench of this home is already open");
    }
    bench = new Bench(this::database, clock, alarm);
    return bench;
  }

  /** The processes there are. */
  public FindProcess findProcess() {
    return new FindProcess(this::database);
  }

  /** Keeps processes of the user's own. */
  public KeepProcess keepProcess() {
    return new KeepProcess(this::database, clock);
  }

  /** Whether the baths of a process may follow one another. */
  public CheckOrder checkOrder() {
    return new CheckOrder(this::database);
  }

  /** Puts a rinse between two baths that should not meet. */
  public AddRinse addRinse() {
    return new AddRinse(this::database, clock);
  }

  /** Removes a process of the user's own. */
  public RemoveProcess removeProcess() {
    return new RemoveProcess(this::database);
  }

  /** The cues of a process or a load. */
  public ShowCues showCues() {
    return new ShowCues(this::database);
  }

  /** Makes cue tracks. */
  public MakeTrack makeTrack() {
    return new MakeTrack();
  }

  /** Makes, changes and dissolves loads. */
  public MakeLoad makeLoad() {
    return new MakeLoad(this::database, clock);
  }

  /** The loads there are. */
  public ListLoads listLoads() {
    return new ListLoads(this::database);
  }

  /** Whether a load has enough developer for its film. */
  public CheckStock checkStock() {
    return new CheckStock(this::database);
  }

  /** What there is tonight. */
  public KeepTonight keepTonight() {
    return new KeepTonight(this::database);
  }

  /** What will be looked at before the first pour of a load. */
  public CheckLoad checkLoad() {
    return new CheckLoad(this::database, clock);
  }

  /** What is looked at when a tank is closed. */
  public KeepTankChecks keepTankChecks() {
    return new KeepTankChecks(this::database);
  }

  /** Opens a run for a load. */
  public StartRun startRun() {
    return new StartRun(this::database, clock, bench());
  }

  /** Puts a rinse between two baths of a run before its first pour. */
  public RinseRun rinseRun() {
    return new RinseRun(clock, bench(), addRinse(), makeLoad(), startRun());
  }

  /** What is said of each bath when it is handled. */
  public CareForSteps careForSteps() {
    return new CareForSteps(this::database);
  }

  /** The other dilutions that a wrongly mixed developer may be. */
  public AskDilutions askDilutions() {
    return new AskDilutions(this::database, clock, bench(), askTime());
  }

  /** Shows a load as its run would be. */
  public ForeseeRun foreseeRun() {
    return new ForeseeRun(this::database, clock);
  }

  /** Certificates for the network at home. */
  public KeepAuthority keepAuthority() {
    return new KeepAuthority(home, clock);
  }

  /** Lets screens in over the network. */
  public PairScreen pairScreen() {
    return new PairScreen(this::database, clock, invitations);
  }

  /** The screens that are let in. */
  public FindScreens findScreens() {
    return new FindScreens(this::database, clock);
  }

  /** Shuts a screen out again. */
  public RemoveScreen removeScreen() {
    return new RemoveScreen(this::database, clock);
  }

  /** The backups in this home. */
  public KeptBackups keptBackups() {
    return new KeptBackups(home);
  }

  /** Makes backups of this home. */
  public MakeBackup makeBackup() {
    return new MakeBackup(home, clock);
  }

  /** Checks what is stored in this home. */
  public Findings checkData() {
    return CheckData.of(home);
  }

  /** The backup this home's server makes every day; it begins when it is told to. */
  public synchronized DailyBackup dailyBackup() {
    DailyBackup daily = dailyBackup;
    if (daily == null) {
      daily = new DailyBackup(makeBackup(), clock, new ThreadAlarm(clock, "backup"));
      dailyBackup = daily;
    }
    return daily;
  }

  Database database() {
    return data.get();
  }

  @Override
  public synchronized void close() {
    try {
      if (dailyBackup != null) {
        dailyBackup.close();
      }
      if (bench != null) {
        bench.close();
      }
      data.close();
    } finally {
      if (lock != null) {
        lock.close();
      }
    }
  }
}
