// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QStringList>
#include <QVariantMap>

#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// The map that the item of a header with its outlets takes, in the reader's language; empty where the header
/// is not described or its flow is not known.
[[nodiscard]] QVariantMap header_picture(VisitRecord& record, const PadBank& bank);

/// What is known of a bank's header beside its picture, or what is missing for it; a sentence each.
[[nodiscard]] QStringList header_words(VisitRecord& record, const PadBank& bank);

}  // namespace wetfront::ui
