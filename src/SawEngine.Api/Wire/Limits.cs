namespace SawEngine.Api.Wire;

/// <summary>The limits in force; published in <c>GET /v1/service</c> and, as bounds, in the OpenAPI document.</summary>
public static class Limits
{
    /// <summary>Largest body, as sent and unpacked.</summary>
    public const int BodyBytes = 8 * 1024 * 1024;

    /// <summary>Deepest nesting of objects and lists in a body.</summary>
    public const int Depth = 16;

    /// <summary>Longest text in code points, where a member states no shorter one.</summary>
    public const int TextLength = 200;

    /// <summary>Longest id in code points.</summary>
    public const int IdLength = 64;

    /// <summary>Longest length written as text.</summary>
    public const int LengthTextLength = 40;

    /// <summary>Most entries of an <c>attributes</c> map.</summary>
    public const int Attributes = 32;

    /// <summary>Most substitutes of an order line or piece.</summary>
    public const int Substitutes = 20;

    /// <summary>Most faults reported in one answer.</summary>
    public const int FaultsReported = 100;

    /// <summary>Broken rules listed in one evaluation of a nest or a schedule; all are counted.</summary>
    public const int ViolationsReported = 1000;

    /// <summary>The most by which a quantity may be less in the search for near misses.</summary>
    public const int FewerPieces = 20;

    /// <summary>Most pieces or order lines in a request.</summary>
    public const int Lines = 2_000;

    /// <summary>Most stock items in a request.</summary>
    public const int StockItems = 5_000;

    /// <summary>Most pieces of one line, and of all lines together.</summary>
    public const int TotalQuantity = 100_000;

    /// <summary>Most bars of one stock item.</summary>
    public const int StockQuantity = 100_000;

    /// <summary>Most length classes of remnants.</summary>
    public const int RemnantClasses = 20;

    /// <summary>Most ids that one stock item is reserved for.</summary>
    public const int ReservedFor = 100;

    /// <summary>Most zones of a bar.</summary>
    public const int Zones = 50;

    /// <summary>Most bars side by side in a cut bundle.</summary>
    public const int BundleWide = 20;

    /// <summary>Most bars on top of one another in a cut bundle.</summary>
    public const int BundleHigh = 10;

    /// <summary>Longest length, in either length unit.</summary>
    public const int Length = 1_000_000;

    /// <summary>Largest cost.</summary>
    public const int Cost = 10_000_000;

    /// <summary>Longest time a calculation may take.</summary>
    public const int Seconds = 60;

    /// <summary>Calculations at the same time.</summary>
    public static int Calculations => Environment.ProcessorCount;

    /// <summary>Calculations that may wait for one to end.</summary>
    public static int WaitingCalculations => 2 * Environment.ProcessorCount;

    /// <summary>Longest time that a calculation waits for another to end.</summary>
    public const int WaitSeconds = 10;

    /// <summary>Time beyond <see cref="Seconds"/> after which a calculation is given up that did not stop by itself.</summary>
    public const int GraceSeconds = 5;

    /// <summary>Requests for calculations in hand: received, waiting or calculated.</summary>
    public static int RequestsInHand => Math.Max(32, 2 * (Calculations + WaitingCalculations));

    /// <summary>Longest time in which a body must have come in.</summary>
    public const int ReceiveSeconds = 60;

    /// <summary>Longest time in which the headers must have come in.</summary>
    public const int HeaderSeconds = 10;

    /// <summary>Least rate at which a body must come in and an answer be taken, after <see cref="RateGraceSeconds"/>.</summary>
    public const int BytesPerSecond = 4096;

    /// <summary>Time that a body or answer may be slower at its beginning.</summary>
    public const int RateGraceSeconds = 5;

    /// <summary>Longest request line: method, target and version.</summary>
    public const int RequestLineBytes = 8 * 1024;

    /// <summary>Largest headers of a request together.</summary>
    public const int HeaderBytes = 32 * 1024;

    /// <summary>Most headers of a request.</summary>
    public const int Headers = 100;

    /// <summary>Most connections at once; those beyond are closed without an answer.</summary>
    public const int Connections = 1_000;

    /// <summary>Least time in Retry-After.</summary>
    public const int RetryAfterLeastSeconds = 1;

    /// <summary>Longest time in Retry-After.</summary>
    public const int RetryAfterMostSeconds = 3;

    /// <summary>No amount of an answer is larger: the dearest bar times the most bars of a request.</summary>
    public const double Amount = 1e12;
}
