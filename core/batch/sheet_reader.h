// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "sheet/sheet.h"
#include "store/store.h"

namespace wetfront {

/// What the record file holds for the sheet of one visit. Stands alone: another thread may make the sheet.
struct SheetSource {
    VisitFile file;
    int revision = 1;
    /// All visits of the house, for the trend; none where it is not needed.
    std::shared_ptr<const std::vector<VisitFile>> of_house = {};
    PhotoBytes photos = {};  ///< of the visit
    /// The bytes that were handed out at the signing: they are the sheet, and none is drawn.
    std::optional<std::string> kept = {};
};

/// Reads what one sheet after the other is made from, a few milliseconds at a time, and never holds more than
/// the visits of one house. `store` outlives it.
class SheetReader {
public:
    SheetReader(const Store& store, SheetKind kind) : store_{store}, kind_{kind} {}

    void begin(const Id& visit);
    /// Reads on; the source once all of it is there. After an error the next visit can be begun.
    [[nodiscard]] Result<std::optional<SheetSource>> read_on();

private:
    const Store& store_;
    SheetKind kind_;
    Id visit_;
    std::optional<SheetSource> source_;
    Id house_;                 ///< whose visits are read
    std::vector<Id> to_read_;  ///< of them, the next one at the back
    std::vector<VisitFile> read_;
    std::shared_ptr<const std::vector<VisitFile>> of_house_;  ///< once all are
};

/// The bytes of the visit's photos, as far as they are in the record file.
[[nodiscard]] Result<PhotoBytes> photos_of(const Store& store, const Visit& visit);

/// The sheet drawn from its source. One that is signed is dated when it was signed, whenever it is drawn.
[[nodiscard]] SheetContent sheet_content(const SheetSource& source, SheetKind kind, WallTime now);

}  // namespace wetfront
