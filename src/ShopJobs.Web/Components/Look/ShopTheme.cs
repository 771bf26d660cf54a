using MudBlazor;

namespace ShopJobs.Web.Components.Look;

/// <summary>
/// Warm paper, graphite ink, petrol for what acts, brick for what is held, the yellow of the paint mark for marks only.
/// The same colours stand in <c>shop.css</c> for pages without a circuit.
/// </summary>
public static class ShopTheme
{
    private static readonly string[] Text = ["Barlow", "system-ui", "sans-serif"];
    private static readonly string[] Narrow = ["Barlow Semi Condensed", "Barlow", "system-ui", "sans-serif"];

    public static MudTheme Theme { get; } = new()
    {
        PaletteLight = new PaletteLight
        {
            Primary = "#0E5A5E",
            PrimaryContrastText = "#FFFFFF",
            Secondary = "#4A4F45",
            SecondaryContrastText = "#FFFFFF",
            Tertiary = "#6B5200",
            TertiaryContrastText = "#FFFFFF",
            Error = "#A8321E",
            ErrorContrastText = "#FFFFFF",
            Warning = "#7A5C00",
            WarningContrastText = "#FFFFFF",
            Success = "#0E5A5E",
            SuccessContrastText = "#FFFFFF",
            Info = "#2F4A6B",
            InfoContrastText = "#FFFFFF",
            Dark = "#1C2126",
            DarkContrastText = "#F6F4EF",
            Background = "#F6F4EF",
            BackgroundGray = "#ECE8DF",
            Surface = "#FFFFFF",
            AppbarBackground = "#0B4548",
            AppbarText = "#FFFFFF",
            DrawerBackground = "#FFFFFF",
            DrawerText = "#1C2126",
            TextPrimary = "#1C2126",
            TextSecondary = "#4A5157",
            TextDisabled = "#6B7177",
            ActionDefault = "#1C2126",
            ActionDisabled = "#6B7177",
            ActionDisabledBackground = "#E3DFD5",
            LinesDefault = "#CFC9BC",
            LinesInputs = "#767C82",
            TableLines = "#CFC9BC",
            TableHover = "#F1EEE6",
            Divider = "#CFC9BC",
        },
        PaletteDark = new PaletteDark
        {
            Primary = "#6CC5C0",
            PrimaryContrastText = "#14181B",
            Secondary = "#C5C1B7",
            SecondaryContrastText = "#14181B",
            Tertiary = "#F4B400",
            TertiaryContrastText = "#14181B",
            Error = "#F08A73",
            ErrorContrastText = "#14181B",
            Warning = "#F4B400",
            WarningContrastText = "#14181B",
            Success = "#6CC5C0",
            SuccessContrastText = "#14181B",
            Info = "#A9C3E6",
            InfoContrastText = "#14181B",
            Dark = "#E8E6E1",
            DarkContrastText = "#14181B",
            Background = "#14181B",
            BackgroundGray = "#0F1214",
            Surface = "#1D2327",
            AppbarBackground = "#0A2A2C",
            AppbarText = "#E8E6E1",
            DrawerBackground = "#1D2327",
            DrawerText = "#E8E6E1",
            TextPrimary = "#E8E6E1",
            TextSecondary = "#B4B8B8",
            TextDisabled = "#8C9294",
            ActionDefault = "#E8E6E1",
            ActionDisabled = "#8C9294",
            ActionDisabledBackground = "#2A3136",
            LinesDefault = "#3A4349",
            LinesInputs = "#8C9599",
            TableLines = "#3A4349",
            TableHover = "#232A2F",
            Divider = "#3A4349",
        },
        Typography = new Typography
        {
            Default = new DefaultTypography { FontFamily = Text, FontSize = "1.0625rem", LineHeight = "1.5", LetterSpacing = "normal" },
            H1 = new H1Typography { FontFamily = Narrow, FontSize = "2rem", FontWeight = "600", LineHeight = "1.2", LetterSpacing = "normal" },
            H2 = new H2Typography { FontFamily = Narrow, FontSize = "1.5rem", FontWeight = "600", LineHeight = "1.25", LetterSpacing = "normal" },
            H3 = new H3Typography { FontFamily = Narrow, FontSize = "1.25rem", FontWeight = "600", LineHeight = "1.3", LetterSpacing = "normal" },
            H6 = new H6Typography { FontFamily = Narrow, FontSize = "1.375rem", FontWeight = "600", LineHeight = "1.3", LetterSpacing = "normal" },
            Body1 = new Body1Typography { FontFamily = Text, FontSize = "1.0625rem", LineHeight = "1.5", LetterSpacing = "normal" },
            Body2 = new Body2Typography { FontFamily = Text, FontSize = "1rem", LineHeight = "1.45", LetterSpacing = "normal" },
            Button = new ButtonTypography { FontFamily = Text, FontSize = "1.0625rem", FontWeight = "600", TextTransform = "none", LetterSpacing = "normal" },
            Subtitle1 = new Subtitle1Typography { FontFamily = Text, FontSize = "1.0625rem", FontWeight = "500", LetterSpacing = "normal" },
            Caption = new CaptionTypography { FontFamily = Text, FontSize = "0.9375rem", LetterSpacing = "normal" },
        },
        LayoutProperties = new LayoutProperties { DefaultBorderRadius = "6px" },
    };
}
