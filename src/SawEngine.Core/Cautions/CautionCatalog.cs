namespace SawEngine.Core.Cautions;

/// <summary>All kinds of caution, in the order in which they are said.</summary>
public static class CautionCatalog
{
    /// <summary>Cut faces.</summary>
    public static readonly CautionKind HotSharpPiece = new(
        "hot_sharp_piece", "Cut faces, burrs and remainders are hot and sharp.", "ISO 16093, 5.4", Confidence.FromMemory);

    /// <summary>Guards.</summary>
    public static readonly CautionKind BladeGuard = new(
        "blade_guard", "The blade is guarded except over its working span; no gloves near a running blade.", "29 CFR 1910.212(a)", Confidence.Published);

    /// <summary>Blade change.</summary>
    public static readonly CautionKind BladeChangeLockout = new(
        "blade_change_lockout", "Lock out the saw before changing the blade or clearing a jam; gloves for handling blades.", "29 CFR 1910.147(a)(2)(ii)", Confidence.Published);

    /// <summary>Lifts for two; {0} what, {1} its mass in kg.</summary>
    public static readonly CautionKind LiftTwoPersons = new(
        "lift_two_persons", "{0} weighs {1:0.#} kg: two persons or a lifting aid.", "NIOSH lifting equation, load constant 23 kg", Confidence.Published);

    /// <summary>Lifts for a crane; {0} what, {1} its mass in kg.</summary>
    public static readonly CautionKind CraneLift = new(
        "crane_lift", "{0} weighs {1:0.#} kg: crane or truck with rated slings.", "29 CFR 1910.176, 1910.184", Confidence.FromMemory);

    /// <summary>Short pieces; {0} length in mm, {1} height in mm.</summary>
    public static readonly CautionKind ShortPieceTips = new(
        "short_piece_tips", "A piece {0:0.#} mm long and {1:0.#} mm high may tip or jam when it comes off.", "ISO 16093, 5.4", Confidence.FromMemory);

    /// <summary>Cut bundles; {0} bars, {1} how they lie.</summary>
    public static readonly CautionKind CutBundle = new(
        "cut_bundle", "{0} bars are cut together, {1}: see that every one of them is clamped; a loose bar or short piece may turn or be thrown.", "ISO 16093, 5.4", Confidence.FromMemory);

    /// <summary>Lead.</summary>
    public static readonly CautionKind LeadBearing = new(
        "lead_bearing", "Lead in chips and coolant mist: wash hands, keep chips apart.", "29 CFR 1910.1025", Confidence.FromMemory);

    /// <summary>Beryllium.</summary>
    public static readonly CautionKind Beryllium = new(
        "beryllium", "Beryllium: cut wet, no compressed air, no dry dust.", "29 CFR 1910.1024", Confidence.Secondary, AttendedOnly: true);

    /// <summary>Chromium in dry dust.</summary>
    public static readonly CautionKind ChromiumDust = new(
        "chromium_dust", "Hot dry dust of a chromium-bearing metal may hold hexavalent chromium.", "29 CFR 1910.1026", Confidence.FromMemory);

    /// <summary>Nickel.</summary>
    public static readonly CautionKind NickelSensitizer = new(
        "nickel_sensitizer", "Nickel in chips and coolant may sensitize the skin.", "common practice, no source", Confidence.CommonPractice);

    /// <summary>Chips that burn.</summary>
    public static readonly CautionKind CombustibleMetalChips = new(
        "combustible_metal_chips", "Chips burn: keep teeth cutting, clear chips often, class D agent at hand, no water on burning chips.", "NFPA 484 (now in NFPA 660)", Confidence.Secondary, AttendedOnly: true);

    /// <summary>Fine dust that burns.</summary>
    public static readonly CautionKind CombustibleMetalDust = new(
        "combustible_metal_dust", "Fine dust is combustible: do not let it gather.", "NFPA 484 (now in NFPA 660)", Confidence.Secondary);

    /// <summary>Magnesium and water.</summary>
    public static readonly CautionKind MagnesiumWaterCoolant = new(
        "magnesium_water_coolant", "Fine magnesium chips give off hydrogen in water-based coolant: suitable mineral oil, or dry and clean.", "NFPA 484 (now in NFPA 660)", Confidence.FromMemory, AttendedOnly: true);

    /// <summary>Cast iron dust.</summary>
    public static readonly CautionKind CastIronDust = new(
        "cast_iron_dust", "Usually sawn with little coolant: dust.", "common practice, no source", Confidence.CommonPractice);

    /// <summary>Long soft chips.</summary>
    public static readonly CautionKind ChipsClogGullets = new(
        "chips_clog_gullets", "Long soft chips clog the gullets: lubricant and a clean chip brush.", "common practice, no source", Confidence.CommonPractice);

    /// <summary>Work hardening.</summary>
    public static readonly CautionKind WorkHardeningKeepFeed = new(
        "work_hardening_keep_feed", "The grade hardens under a rubbing tooth: never let the blade dwell, keep the feed.", "common practice, no source", Confidence.CommonPractice);

    /// <summary>Coolant mist.</summary>
    public static readonly CautionKind CoolantMist = new(
        "coolant_mist", "Keep coolant mist and skin contact low.", "NIOSH recommended exposure limit for metalworking fluids, 0.4 mg/m3", Confidence.FromMemory);

    /// <summary>Graphite.</summary>
    public static readonly CautionKind GraphiteDust = new(
        "graphite_dust", "Graphite dust: cut with extraction at the cut; it conducts, so keep it out of switchgear and motors.", "29 CFR 1910.1000, table Z-3", Confidence.FromMemory);

    /// <summary>Plastics.</summary>
    public static readonly CautionKind PlasticsDust = new(
        "plastics_dust", "Plastics chips and dust burn and cling: clear them often; overheated plastics give off harmful fumes, so do not let the blade rub.",
        "29 CFR 1910.1000; NFPA 654 (now in NFPA 660)", Confidence.FromMemory);

    /// <summary>Crystalline silica.</summary>
    public static readonly CautionKind SilicaDust = new(
        "silica_dust", "Dust may hold respirable crystalline silica: cut wet or with extraction, no dry sweeping, no compressed air.", "29 CFR 1910.1053", Confidence.FromMemory);

    /// <summary>Wood.</summary>
    public static readonly CautionKind WoodDust = new(
        "wood_dust", "Wood dust burns and harms the lungs: extraction at the cut; keep it away from hot metal chips.", "29 CFR 1910.1000; NFPA 664 (now in NFPA 660)", Confidence.FromMemory);

    /// <summary>Zinc coating.</summary>
    public static readonly CautionKind ZincCoating = new(
        "zinc_coating", "Stock is coated with zinc: dust and, where the cut runs hot, fume of zinc; keep its chips apart.", "29 CFR 1910.1000, table Z-1 (zinc oxide)", Confidence.FromMemory);

    /// <summary>Paint.</summary>
    public static readonly CautionKind PaintedStock = new(
        "painted_stock", "Stock is painted: dust of the paint may hold lead or chromates; find out from its data sheet before cutting.",
        "29 CFR 1910.1025, 1910.1026, 1910.1200", Confidence.FromMemory);

    /// <summary>Dry-only grades on a saw with coolant.</summary>
    public static readonly CautionKind CoolantNotAllowed = new(
        "coolant_not_allowed", "The grade is cut dry: shut off the coolant and clear the saw of it first.", "safety data sheet of the material, 29 CFR 1910.1200", Confidence.FromMemory);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<CautionKind> Items { get; } =
    [
        HotSharpPiece, BladeGuard, BladeChangeLockout, LiftTwoPersons, CraneLift, ShortPieceTips, CutBundle, CombustibleMetalChips, MagnesiumWaterCoolant,
        CombustibleMetalDust, Beryllium, LeadBearing, ChromiumDust, NickelSensitizer, CastIronDust, WorkHardeningKeepFeed, ChipsClogGullets, CoolantMist,
        GraphiteDust, PlasticsDust, SilicaDust, WoodDust, ZincCoating, PaintedStock, CoolantNotAllowed,
    ];

    /// <summary>The kind with a code; null where there is none.</summary>
    public static CautionKind? Find(string code) => Items.FirstOrDefault(kind => string.Equals(kind.Code, code, StringComparison.Ordinal));
}
