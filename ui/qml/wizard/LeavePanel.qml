// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import Wetfront.Controls
import Wetfront.ViewModels

// Asks before one leaves a pump that runs on the stopwatch or is off for a test. Opens as it is loaded.
Item {
    id: asked

    required property SessionViewModel session
    required property string question
    required property string detail
    required property bool closing

    Component.onCompleted: panel.ask({
        question: question,
        detail: detail,
        keepText: qsTr("Stay here"),
        doText: closing ? qsTr("Close Wetfront") : qsTr("Leave the page"),
        act: () => asked.session.leaveAnyway(asked.closing)
    })

    ConfirmPanel {
        id: panel
    }
}
