// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Templates as T
import Wetfront.Theme

// A sheet of paper laid over the page: what all overlays share. Closing gives the focus back to where it was.
// Whoever fills it sets contentHeight.
T.Popup {
    id: panel

    property string title

    // What had the keyboard before; it gets it back, so that Tab goes on where it was.
    property Item before: null
    onAboutToShow: before = parent ? parent.Window.activeFocusItem : null
    onClosed: if (before)
        before.forceActiveFocus()

    readonly property real roomWidth: T.Overlay.overlay ? T.Overlay.overlay.width : 0
    readonly property real roomHeight: T.Overlay.overlay ? T.Overlay.overlay.height : 0

    parent: T.Overlay.overlay
    x: Math.round((roomWidth - width) / 2)
    y: Math.round((roomHeight - height) / 2)
    width: Math.min(Theme.readingWidth, roomWidth - 2 * Theme.space)
    height: Math.min(contentHeight + topPadding + bottomPadding, roomHeight - 2 * Theme.space)
    padding: Theme.spaceLarge
    modal: true
    focus: true
    closePolicy: T.Popup.CloseOnEscape

    T.Overlay.modal: Rectangle {
        color: Theme.scrim
    }
    background: Rectangle {
        color: Theme.surface
        radius: Theme.radius
        border.width: Theme.borderStrong
        border.color: Theme.ink
        Accessible.role: Accessible.Dialog
        Accessible.name: panel.title
    }
}
