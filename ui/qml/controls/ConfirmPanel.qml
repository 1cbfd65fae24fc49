// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Theme

// Asks before something that can't be taken back. Esc, Enter and the first button keep things as they are.
Panel {
    id: panel

    property string detail
    property string keepText
    property string doText
    property bool warning: true
    property var act: null

    signal kept

    function ask(request: var): void {
        title = request.question;
        detail = request.detail ?? "";
        keepText = request.keepText;
        doText = request.doText;
        warning = request.warning ?? true;
        act = request.act ?? null;
        open();
        keep.forceActiveFocus(Qt.TabFocusReason);
    }

    property bool answered: false
    onAboutToShow: answered = false
    onClosed: if (!answered)
        kept()

    function answer(): void {
        answered = true;
        close();
        if (act)
            act.call();
    }

    contentHeight: body.implicitHeight

    ColumnLayout {
        id: body
        anchors.fill: parent
        spacing: Theme.space
        PlainWords {
            text: panel.title
            kind: "title"
            Layout.fillWidth: true
        }
        PlainWords {
            visible: text.length > 0
            text: panel.detail
            Layout.fillWidth: true
        }
        Flow {
            spacing: Theme.space
            layoutDirection: Qt.RightToLeft
            Layout.fillWidth: true
            Layout.topMargin: Theme.space
            ActionButton {
                id: keep
                text: panel.keepText
                kind: "primary"
                onClicked: panel.close()
            }
            ActionButton {
                text: panel.doText
                kind: panel.warning ? "warning" : "quiet"
                pictogram: panel.warning ? "problem" : ""
                onClicked: panel.answer()
            }
        }
    }
}
