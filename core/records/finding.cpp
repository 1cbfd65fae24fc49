// SPDX-License-Identifier: Apache-2.0
#include "records/finding.h"

namespace wetfront {

std::string_view name_of(Severity severity) {
    switch (severity) {
        case Severity::note:
            return "note";
        case Severity::waste:
            return "waste";
        case Severity::fault:
            return "fault";
        case Severity::harm:
            return "harm";
    }
    return {};
}

Message label_of(Severity severity) {
    switch (severity) {
        case Severity::note:
            return WF_TEXT("Note");
        case Severity::waste:
            return WF_TEXT("Waste");
        case Severity::fault:
            return WF_TEXT("Fault");
        case Severity::harm:
            return WF_TEXT("Harm");
    }
    return {};
}

}  // namespace wetfront
