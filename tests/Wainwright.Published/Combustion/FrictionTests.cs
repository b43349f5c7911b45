using Wainwright.Methods.Combustion;

namespace Wainwright.Published.Combustion;

public sealed class FrictionTests
{
    // Source:    README of a small open "colebrook" package: Swamee–Jain at Re 60 000, e/D 0.0023 gives 0.027.
    // Seen:      in that file.
    // Tolerance: printed to 0.001: half of it.
    [Fact]
    public void Swamee_and_Jain_give_the_factor_of_the_readme() =>
        Assert.Equal(0.027, SwameeJainFriction.Of(new(60_000, 0.0023)).Factor, tolerance: 0.0005);

    // Source:    The open "fluids" library for Python, docstring examples at Re 100 000, e/D 0.0001: Colebrook 0.018513866077471648,
    //            Swamee–Jain 0.018452424431901808, Haaland 0.018265053014793857.
    // Seen:      in its friction module. Another program solving the same published equations, so the last places must agree.
    // Tolerance: rounding, 1e-12; the library writes Swamee–Jain with (6.97/Re)^0.9 = 5.73997/Re^0.9 for 5.74, which moves it by 2.1e-8.
    [Fact]
    public void The_three_forms_give_the_factors_of_another_library()
    {
        ColebrookFriction.Input flow = new(1e5, 1e-4);
        Assert.Equal(0.018513866077471648, ColebrookFriction.Of(flow).Factor, tolerance: 1e-12);
        Assert.Equal(0.018452424431901808, SwameeJainFriction.Of(flow).Factor, tolerance: 2.2e-8);
        Assert.Equal(0.018265053014793857, HaalandFriction.Of(flow).Factor, tolerance: 1e-12);
    }

    // Source:    Pipe-network manual, problem 0.2: water, 300 mm, 6 m, 2 m/s, e 0.12 mm, ν 1e-6: f 0.0169, head 0.0689 m (by Swamee–Jain).
    // Seen:      kypipe.com, chapter 0.
    // Tolerance: Colebrook lies 0.6 % below Swamee–Jain here: 0.0002 of f, 0.0004 m of head.
    [Fact]
    public void Darcy_gives_the_head_of_the_pipe_manual()
    {
        var pipe = DuctDrop.Of(new(300, 6_000, 0.12, FlowM3PerH: 2 * Math.PI / 4 * 0.09 * 3600, FittingsK: [], DensityKgPerM3: 1_000, ViscosityM2PerS: 1e-6));
        Assert.Equal(0.0169, pipe.Factor, tolerance: 0.0002);
        Assert.Equal(0.0689, pipe.HeadM(1_000), tolerance: 0.0004);
    }

    // Source:    An examination question: laminar, Re 800, 100 mm, 0.01 m³/s: f 0.08, 66.1 m lost per km.
    // Seen:      on byjus.com.
    // Tolerance: the question takes g 9.81 and prints one place: 0.1 m.
    [Fact]
    public void Laminar_flow_loses_the_head_of_the_question()
    {
        var speed = 0.01 / (Math.PI / 4 * 0.01);
        var pipe = DuctDrop.Of(new(100, 1e6, 0, FlowM3PerH: 36, FittingsK: [], DensityKgPerM3: 1_000, ViscosityM2PerS: speed * 0.1 / 800));
        Assert.Equal(0.08, pipe.Factor, tolerance: 1e-9);
        Assert.Equal(66.1, pipe.HeadM(1_000), tolerance: 0.1);
    }

    // Source:    engineeringtoolbox.com d_208: a sharp 90° bend (1.3) at 10 m/s costs 6.6 m of air.
    // Seen:      in that table's worked line.
    // Tolerance: printed to 0.1: half of it.
    [Fact]
    public void A_sharp_bend_costs_the_head_of_the_table()
    {
        var bend = DuctDrop.Of(new(100, 0, 0, FlowM3PerH: 10 * Math.PI / 4 * 0.01 * 3600, FittingsK: [FittingLoss.SharpBend90]));
        Assert.Equal(6.6, bend.HeadM(DuctDrop.AirKgPerM3), tolerance: 0.05);
    }

    // Source:    "ASHRAE duct design" lecture: 350 × 200 mm: Dh 254.5 mm, De 286.4 mm.
    // Seen:      studylib.net 25535778.
    // Tolerance: printed to 0.1 mm: the last place (254.55 is printed as 254.5).
    [Fact]
    public void A_rectangular_duct_has_the_diameters_of_the_lecture()
    {
        var duct = RectangularDuct.Of(new(350, 200));
        Assert.Equal(254.5, duct.HydraulicMm, tolerance: 0.1);
        Assert.Equal(286.4, duct.EquivalentMm, tolerance: 0.1);
    }
}
