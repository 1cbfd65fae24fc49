// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "records/finding.h"
#include "records/stroke.h"

namespace wetfront {

// The printed sheet as plain data: what it says and in which order. Painters choose sizes, page breaks and
// language.

struct SheetHeading {
    Message text;
};

struct SheetParagraph {
    Message text;
    bool strong = false;
};

/// Label and value pairs, two columns on paper.
struct SheetFacts {
    struct Fact {
        Message label;
        Message value;
    };
    std::vector<Fact> facts;
};

struct SheetTable {
    struct Cell {
        Message text;
        bool marked = false;  ///< a deviation: printed bold with a sign in front
    };
    std::vector<Message> columns;
    std::vector<std::vector<Cell>> rows;  ///< each as long as `columns`
    std::vector<double> widths;           ///< shares of the page width, as many as columns
};

/// One period of a pump's cycle for one set of settings, drawn to scale; times from pump start.
struct CycleStrip {
    Message label;            ///< "found", "advised", "left"
    double period_s = 0.0;    ///< 0: no cycle known, only the label is drawn
    bool continuous = false;  ///< the pump never rests
    double on_s = 0.0;
    std::optional<double> ceiling_s;
    double fill_s = 0.0;  ///< 0: not measured
    std::optional<double> wet_through_s;
    std::optional<double> run_off_s;  ///< dripping goes on for this long after the stop
    std::optional<double>
        dry_patch_s;  ///< from pump start; only where it comes before the next start wets the far end
    /// Where the cycle keeps the pad wet at the design hour: the least that the far end still holds, just as
    /// water comes back, as a share (0 to 1) of what it holds when it drips evenly. Without it every period
    /// is drawn from dry.
    std::optional<double> lowest_level;
    std::optional<double> drip_returns_s;  ///< goes with lowest_level: the far end drips evenly again
};
struct SheetTimeline {
    Message title;
    std::vector<CycleStrip> strips;
};

/// A bank as a line drawing: header on top, pump at its true end.
struct SheetBank {
    Message name;
    bool pump_on_left = true;
    double length_m = 0.0;  ///< 0: not described
    double height_m = 0.0;
    Message caption;
};
struct SheetBanks {
    std::vector<SheetBank> banks;
};

struct SheetFinding {
    Severity severity = Severity::note;
    Message where;
    Message message;
    Message remedy;
    std::string source;
    std::vector<Message> causes{};  ///< likely ones, likeliest first
};
struct SheetFindings {
    std::vector<SheetFinding> findings;  ///< worst first
};

struct SheetChecks {
    struct Line {
        Message text;
        bool done = false;
        std::string note;
        Message word{};  ///< the tick as a word, for whoever sees the text alone; empty: none printed
    };
    std::vector<Line> lines;
};

/// The words of injury (danger, warning, caution) or of property (notice).
enum class SignalWord { danger, warning, caution, notice };
[[nodiscard]] Message label_of(SignalWord word);

struct SheetCautions {
    struct Line {
        SignalWord word = SignalWord::caution;
        Message text;
    };
    std::vector<Line> lines;
};

/// Lines to sign on by hand. Of a signature that was given, name and time are printed, and its drawing on the
/// line.
struct SheetSignatures {
    struct Line {
        Message role;
        std::string name;  ///< empty: nobody signed yet
        std::string signed_at;
        std::vector<Stroke> drawn{};  ///< empty: the line is blank
    };
    std::vector<Line> lines;
};

/// Photos in small, in the order of their numbers.
struct SheetPhotos {
    struct Picture {
        std::string jpeg;  ///< empty: its bytes are not at hand
        Message caption;
    };
    std::vector<Picture> pictures;
};

/// A text for a camera (QR code), and what is said of it.
struct SheetCode {
    std::string text;  ///< not empty, at most 600 bytes
    std::vector<Message> lines;
};

using SheetBlock =
    std::variant<SheetHeading, SheetParagraph, SheetFacts, SheetTable, SheetTimeline, SheetBanks,
                 SheetFindings, SheetPhotos, SheetChecks, SheetCautions, SheetSignatures, SheetCode>;

struct SheetContent {
    Message title;
    std::string id;  ///< of the visit; on every page
    int revision = 1;
    bool draft = true;     ///< DRAFT across every page until signed
    Message running_head;  ///< firm, farm and house; on every page
    std::vector<SheetBlock> blocks;
};

}  // namespace wetfront
