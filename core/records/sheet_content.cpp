// SPDX-License-Identifier: Apache-2.0
#include "records/sheet_content.h"

namespace wetfront {

Message label_of(SignalWord word) {
    switch (word) {
        case SignalWord::danger:
            return WF_TEXT("DANGER");
        case SignalWord::warning:
            return WF_TEXT("WARNING");
        case SignalWord::caution:
            return WF_TEXT("CAUTION");
        case SignalWord::notice:
            return WF_TEXT("NOTICE");
    }
    return {};
}

}  // namespace wetfront
