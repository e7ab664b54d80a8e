namespace SawEngine.Core.Sections;

/// <summary>Integrals over the blade's travel through a section.</summary>
internal static class Travel
{
    private const double RelativeError = 1e-12;
    private const int MostBisections = 2_000;

    // Nodes and weights of the 15-point Kronrod rule and of the 7-point Gauss rule within it (every second node). Source: QUADPACK, routine QK15.
    private static readonly double[] s_nodes =
    [
        0.991455371120812639206854697526329, 0.949107912342758524526189684047851, 0.864864423359769072789712788640926, 0.741531185599394439863864773280788,
        0.586087235467691130294144838258730, 0.405845151377397166906606412076961, 0.207784955007898467600689403773245, 0,
    ];

    private static readonly double[] s_kronrod =
    [
        0.022935322010529224963732008058970, 0.063092092629978553290700663189204, 0.104790010322250183839876322541518, 0.140653259715525918745189590510238,
        0.169004726639267902826583426598550, 0.190350578064785409913256402421014, 0.204432940075298892414161999234649, 0.209482141084727828012999174891714,
    ];

    private static readonly double[] s_gauss =
    [
        0, 0.129484966168869693270611432679082, 0, 0.279705391489276667901467771423780, 0, 0.381830050505118944950369775488975, 0, 0.417959183673469387755102040816327,
    ];

    /// <summary>
    /// Integral of f over the depth in mm, from the top to the bottom of the section; f gets the depth. Relative error about 1e-12 where f is smooth
    /// between breakpoints, or has square-root ends there as the contact width of an arc has; kinks elsewhere (a feed that reaches a limit) are found by
    /// bisection. Bisections are limited, so that a section much thinner than wide, whose contact width is mostly rounding, costs accuracy and not time.
    /// </summary>
    internal static double Integrate(Section section, Func<double, double> f)
    {
        var intervals = section.Breakpoints.Zip(section.Breakpoints.Skip(1), (top, bottom) => Smoothed(f, top, bottom))
            .Select(g => (Function: g, Estimate: Estimate(g, 0, Math.PI))).ToArray();
        var tolerance = RelativeError * intervals.Sum(i => Math.Abs(i.Estimate.Value));
        var bisections = MostBisections;
        return intervals.Sum(i => Refined(i.Function, 0, Math.PI, i.Estimate, tolerance, ref bisections));
    }

    /// <summary>Depth = middle - half cos(angle): makes square-root ends smooth.</summary>
    private static Func<double, double> Smoothed(Func<double, double> f, double top, double bottom)
    {
        var (middle, half) = ((top + bottom) / 2, (bottom - top) / 2);
        return angle => f(middle - half * Math.Cos(angle)) * half * Math.Sin(angle);
    }

    private static double Refined(
        Func<double, double> g, double from, double to, (double Value, double Error) estimate, double tolerance, ref int bisections)
    {
        // Written so that a value that is no number ends the search too.
        if (!(estimate.Error > tolerance) || bisections == 0)
            return estimate.Value;
        bisections--;
        var middle = (from + to) / 2;
        return Refined(g, from, middle, Estimate(g, from, middle), tolerance, ref bisections)
            + Refined(g, middle, to, Estimate(g, middle, to), tolerance, ref bisections);
    }

    private static (double Value, double Error) Estimate(Func<double, double> g, double from, double to)
    {
        var (middle, half) = ((from + to) / 2, (to - from) / 2);
        var (kronrod, gauss) = (0d, 0d);
        for (var i = 0; i < s_nodes.Length; i++)
        {
            var value = s_nodes[i] == 0 ? g(middle) : g(middle - half * s_nodes[i]) + g(middle + half * s_nodes[i]);
            kronrod += s_kronrod[i] * value;
            gauss += s_gauss[i] * value;
        }
        return (half * kronrod, half * Math.Abs(kronrod - gauss));
    }
}
